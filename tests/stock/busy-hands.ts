// A process that moves parts as fast as it can and says "done" after each act that was confirmed, until it is killed.
import { dirname } from 'node:path';
import { openShop } from '../../main/database/open-shop.ts';
import { systemClock } from '../../main/ports/clock.ts';
import { dispatch } from '../../main/rpc/dispatch.ts';
import { Desk } from '../../main/shop/desk.ts';

const [file = '', input = '{}'] = process.argv.slice(2);
const { jobId, by, batchId, kitBatchId } = JSON.parse(input);
const desk = Desk.over(await openShop(file, 'write', systemClock), dirname(file));
const { frictionId } = await partOfBatch();
for (let turn = 0; ; turn += 1) {
  const reply =
    turn % 2 === 0
      ? await dispatch(desk, 'stock.openKit', { batchId: kitBatchId, quantity: 1, by })
      : await dispatch(desk, 'stock.pullForJob', { jobId, partId: frictionId, batchId, quantity: 1, by });
  if (!reply.ok) throw new Error(JSON.stringify(reply.error));
  process.stdout.write('done\n');
}

async function partOfBatch(): Promise<{ frictionId: number }> {
  const reply = await dispatch(desk, 'stock.listParts', {
    text: 'KX3-FR-080',
    kind: null,
    familyId: null,
    only: 'in use',
    offset: 0,
    limit: 1,
  });
  const [part] = reply.ok ? reply.value.parts : [];
  if (!part) throw new Error('the friction is not there');
  return { frictionId: part.partId };
}
