// A shop made for being killed: a sheet, parts on the shelf, a gauge, and the first ticket.
import { systemClock } from '../../main/ports/clock.ts';
import { dispatch } from '../../main/rpc/dispatch.ts';
import type { Caller } from '../../main/shop/demo/kx3-job.ts';
import { kx3Sheet } from '../../main/shop/demo/kx3-sheet.ts';
import { Desk } from '../../main/shop/desk.ts';

/** Calls as the shells do, and throws what was refused. */
export function callerOn(desk: Desk): Caller {
  return async (method, input) => {
    const reply = await dispatch(desk, method, input);
    if (!reply.ok) throw new Error(`${method}: ${reply.error.message}`);
    return reply.value;
  };
}

/** Makes the shop file in `folder` and answers its path. */
export async function shopToKill(folder: string): Promise<string> {
  const desk = await Desk.at(folder, systemClock);
  const call = callerOn(desk);
  await call('shop.createShop', {
    shopName: 'Harrow Lane Transmission',
    lengthUnit: 'thou',
    paper: 'letter',
    personName: 'Rosa Aldane',
    personInitials: 'RA',
  });
  const by = 1;
  const { familyId } = await call('specs.addFamily', { name: 'KX3', by });
  await call('specs.saveSheet', { familyId, sheet: kx3Sheet, sourceNote: '', by });
  const part = {
    partId: null,
    supplier: '',
    unitOfIssue: 'each',
    bin: '',
    cost: '4.10',
    price: '7.50',
    coreCharge: '',
    reorderPoint: null,
    reorderQuantity: null,
    familyIds: [familyId],
    by,
  } as const;
  const description = 'Forward friction, 80 thou';
  const friction = await call('stock.savePart', {
    ...part,
    number: 'KX3-FR-080',
    description,
    kind: 'friction',
    contents: [],
  });
  const seal = await call('stock.savePart', {
    ...part,
    number: 'KX3-SL-11',
    description: 'Piston seal, inner',
    kind: 'seal',
    contents: [],
  });
  await call('stock.savePart', {
    ...part,
    number: 'KX3-KIT-M',
    description: 'Master kit',
    kind: 'kit',
    contents: [
      { partId: friction.partId, quantity: 9 },
      { partId: seal.partId, quantity: 3 },
    ],
  });
  // One need is missing at every handover, so each act writes as many rows every time.
  for (const { stageId, name } of await call('jobs.listStages', {})) {
    const needs = name === 'Final check' ? ['signed off'] : name === 'Ready' ? ['delivery recorded'] : [];
    await call('jobs.changeStageNeeds', { stageId, needs, by });
  }
  const file = desk.shop().file;
  await desk.close();
  return file;
}
