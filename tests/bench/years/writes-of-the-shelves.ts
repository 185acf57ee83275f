// Parts come in, go out and come back; plates are measured, looked over and put into cans.
import { dayAfter } from '../../../app/jobs/calendar-days.ts';
import type { Round } from './years-writes.ts';

export async function writeOfTheShelves(round: Round, jobId: number): Promise<void> {
  await moveParts(round, jobId);
  await measurePlates(round);
  const { call, turn, by, today } = round;
  const core = { direction: 'to send back', what: 'Converter', quantity: 1, charge: '120', jobId, by } as const;
  const { coreId } = await call('stock.openCore', { ...core, dueOn: dayAfter(today, 30) });
  await call('stock.settleCore', { coreId, how: 'sent back', note: '', by });
  await call('stock.saveLabelSize', { labelSizeId: null, name: `Bin ${turn}`, width: '50', height: '25', by });
}

async function moveParts({ call, turn, by, familyId, one }: Round, jobId: number): Promise<void> {
  const { partId } = await call('stock.savePart', {
    partId: null,
    number: `KX3-NEW-${turn}`,
    description: 'Forward friction',
    kind: 'friction',
    supplier: 'Brightwater Friction',
    unitOfIssue: 'each',
    bin: 'C4',
    cost: '4.10',
    price: '7.50',
    coreCharge: '',
    reorderPoint: 8,
    reorderQuantity: 12,
    familyIds: [familyId],
    contents: [],
    by,
  });
  const came = { receivedOn: null, mark: `FB-${turn}`, document: '', unitCost: '', by };
  const { batchId } = await call('stock.receiveBatch', { partId, quantity: 40, ...came });
  await call('stock.pullForJob', { jobId, partId, batchId, quantity: 4, by });
  // Out of the oldest batches of a part that was always there, as most pulls are.
  const usual = one(
    "select part_id from parts where kind = 'seal' and is_retired = 0 order by part_id limit 1 offset ?",
    turn,
  );
  await call('stock.pullForJob', { jobId, partId: usual, batchId: null, quantity: 2, isSure: true, by });
  await call('stock.returnFromJob', { jobId, batchId, partId: null, quantity: 1, by });
  await call('stock.scrapFromBatch', { batchId, quantity: 1, reason: 'bent', by });
  await call('stock.countBatch', { batchId, counted: 30, reason: 'shelf count', by });
  await call('jobs.addLinesFromStock', { jobId, batchIds: [batchId], by });
  const kit = one(
    "select batch_id from batches join parts using (part_id) where kind = 'kit' limit 1 offset ?",
    turn % 20,
  );
  await call('stock.openKit', { batchId: kit, quantity: 1, by });
  const retired = one("select part_id from parts where kind = 'washer' limit 1 offset ?", turn);
  await call('stock.retirePart', { partId: retired, isRetired: true, by });
}

async function measurePlates({ call, turn, by }: Round): Promise<void> {
  const plate = { kind: 'steel', outline: 'KX3 direct', by } as const;
  const { pieceId } = await call('stock.addPiece', { ...plate, tag: `Z${turn}`, typed: '91.5' });
  await call('stock.remeasurePiece', { pieceId, typed: '91.0', reason: 'measured again', by });
  const seen = { flat: 'flat', offFlat: '', hasHotSpots: false, isGlazed: false, isConed: false, note: '' } as const;
  await call('stock.lookOverPlate', { pieceId, ...seen, isUsable: true, by });
  await call('stock.putInCan', { pieceId, class_nm: 12_700, by });
  const bent = await call('stock.addPiece', { ...plate, tag: `W${turn}`, typed: '90.5' });
  await call('stock.discardPiece', { pieceId: bent.pieceId, reason: 'dished', by });
  const { canId } = await call('stock.addCan', { ...plate, typed: String(120 + turn), count: 20 });
  await call('stock.moveInCan', { canId, change: -2, reason: 'for a ticket', by });
  await call('stock.countCan', { canId, count: 17, reason: 'counted', by });
  const box = { ...plate, batchId: null, micrometer: '', isSure: true };
  await call('stock.addMeasured', { ...box, typed: '92.0', into: { kind: 'single', tag: `V${turn}` } });
  const { into } = await call('stock.addMeasured', { ...box, typed: '92.0', into: { kind: 'can', class_nm: 12_700 } });
  const canMovementId = into.kind === 'can' ? into.canMovementId : null;
  await call('stock.takeBackMeasured', { canMovementId, pieceId: null, by });
}
