// A shop with a few invented parts, a kit and a ticket to pull them for.
import { shopWithKx3 } from '../desk.ts';

export const blankPart = {
  partId: null,
  kind: 'other',
  supplier: '',
  unitOfIssue: 'each',
  bin: '',
  cost: '',
  price: '',
  coreCharge: '',
  reorderPoint: null,
  reorderQuantity: null,
  familyIds: [] as number[],
  contents: [] as Array<{ partId: number; quantity: number }>,
};

export async function shopWithParts() {
  const shop = await shopWithKx3();
  const { call, by, familyId } = shop;
  const { partId: frictionId } = await call('stock.savePart', {
    ...blankPart,
    number: 'KX3-FR-080',
    description: 'Forward friction, 80 thou',
    kind: 'friction',
    supplier: 'Brightwater Friction',
    bin: 'C4',
    cost: '4.10',
    price: '7.50',
    reorderPoint: 10,
    reorderQuantity: 6,
    familyIds: [familyId],
    by,
  });
  const { partId: sealId } = await call('stock.savePart', {
    ...blankPart,
    number: 'KX3-SL-11',
    description: 'Piston seal, inner',
    kind: 'seal',
    by,
  });
  const { partId: kitId } = await call('stock.savePart', {
    ...blankPart,
    number: 'KX3-KIT-M',
    description: 'Master kit',
    kind: 'kit',
    contents: [
      { partId: frictionId, quantity: 9 },
      { partId: sealId, quantity: 3 },
    ],
    by,
  });
  const { familyId: otherFamilyId } = await call('specs.addFamily', { name: 'RV2', by });
  const { jobId } = await call('jobs.checkIn', {
    customer: { name: 'Tam Okoro', phone: '555 0190', email: '' },
    unit: { familyId, serial: 'KX3-19-2208', vehicle: '', use: 'tow' },
    complaint: '',
    caseTag: '',
    distance: null,
    by,
  });
  const receive = async (
    partId: number,
    quantity: number,
    mark: string,
    receivedOn: string | null = '2026-11-02',
    document = '',
  ) => (await call('stock.receiveBatch', { partId, quantity, receivedOn, mark, document, unitCost: '', by })).batchId;
  const closeJob = async () => {
    const stages = await call('jobs.listStages', {});
    const closed = stages.find((stage) => stage.isClosed);
    await call('jobs.moveToStage', { jobId, stageId: closed?.stageId, reason: 'given back as it is', by });
  };
  return { ...shop, frictionId, sealId, kitId, otherFamilyId, jobId, receive, closeJob };
}
