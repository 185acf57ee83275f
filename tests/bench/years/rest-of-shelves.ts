// The shelves of a shop of many years: parts with their batches and kits, cans, loose steels.
import type { BulkInserts } from '../../../main/shop/demo/history/bulk-inserts.ts';
import type { Draw } from '../seeded.ts';
import type { TicketOnFile } from './years-rest.ts';
import type { Size } from './years-shop.ts';

const kinds = ['seal', 'bushing', 'washer', 'valve-body part', 'steel', 'friction', 'other'] as const;
const suppliers = ['Brightwater Friction', 'Ostrander Supply', 'Halvorsen Hard Parts', 'Tern Valley Seals'];
const outlines = ['KX3 forward', 'KX3 direct', 'KX3 low/reverse', 'WQ7 first', 'WQ7 second', 'QN2 low', 'QN2 high'];

type Shelf = { readonly inserts: BulkInserts; readonly draw: Draw; readonly at: string };

/** Answers what pulls parts for a ticket. */
export function writeShelves(
  inserts: BulkInserts,
  draw: Draw,
  size: Size,
  tickets: readonly TicketOnFile[],
): (ticket: TicketOnFile) => void {
  const shelf = { inserts, draw, at: tickets[0]?.openedAt ?? '' };
  const parts = Array.from({ length: size.parts }, (_, index) => writePart(shelf, index));
  const batches = parts.flatMap((partId) =>
    Array.from({ length: draw.whole(1, 4) }, () => writeBatch(shelf, partId, 20_000)),
  );
  const kits = Array.from({ length: 20 }, (_, index) => writeKit(shelf, index, parts.slice(index * 6, index * 6 + 6)));
  batches.push(...kits);
  for (const outline of outlines) writeCans(shelf, outline);
  for (let steel = 0; steel < size.looseSteels; steel += 1) writeSteel(shelf, steel);
  return ({ jobId, openedAt, by }) => {
    const count = Math.floor(jobId * size.pullsOfTicket) - Math.floor((jobId - 1) * size.pullsOfTicket);
    for (let pull = 0; pull < count; pull += 1) {
      inserts.insert('movements', {
        batch_id: batches[draw.whole(0, batches.length - 1)] ?? 0,
        kind: 'pull',
        change: -draw.whole(1, 4),
        job_id: jobId,
        price_cents: 900,
        reason: '',
        moved_at: openedAt,
        moved_by: by,
      });
    }
  };
}

function writePart({ inserts, draw }: Shelf, index: number): number {
  const kind = kinds[index % kinds.length] ?? 'other';
  return inserts.insert('parts', {
    number: `${kind.slice(0, 2).toUpperCase()}-${10_000 + index * 7}`,
    description: `${kind}, ${draw.whole(10, 90)} by ${draw.whole(2, 9)}`,
    kind,
    supplier: suppliers[index % suppliers.length] ?? '',
    unit_of_issue: 'each',
    bin: `${String.fromCharCode(65 + (index % 12))}${index % 30}`,
    cost_cents: 400,
    price_cents: 900,
    core_charge_cents: null,
    reorder_point: index % 3 === 0 ? 4 : null,
    reorder_quantity: index % 3 === 0 ? 12 : null,
    is_retired: index % 20 === 0 ? 1 : 0,
  });
}

function writeBatch({ inserts, draw, at }: Shelf, partId: number, received: number): number {
  const batchId = inserts.insert('batches', {
    part_id: partId,
    kit_batch_id: null,
    mark: `M-${partId}-${draw.whole(1, 1_000_000)}`,
    document: '',
    received_on: at.slice(0, 10),
    unit_cost_cents: 400,
    received_at: at,
    received_by: 1,
  });
  inserts.insert('movements', {
    batch_id: batchId,
    kind: 'receive',
    change: received,
    job_id: null,
    price_cents: null,
    reason: '',
    moved_at: at,
    moved_by: 1,
  });
  return batchId;
}

/** Answers its batch. */
function writeKit(shelf: Shelf, index: number, contents: readonly number[]): number {
  const { inserts } = shelf;
  const kitId = inserts.insert('parts', {
    number: `KIT-${index + 1}`,
    description: `Overhaul kit ${index + 1}`,
    kind: 'kit',
    supplier: suppliers[0] ?? '',
    unit_of_issue: 'each',
    bin: 'K1',
    cost_cents: 14_000,
    price_cents: 21_500,
    core_charge_cents: null,
    reorder_point: 1,
    reorder_quantity: 2,
    is_retired: 0,
  });
  for (const partId of contents) inserts.insert('kit_lines', { kit_id: kitId, part_id: partId, quantity: 2 });
  const batchId = writeBatch(shelf, kitId, 50_000);
  for (const partId of contents) inserts.insert('kit_batch_lines', { batch_id: batchId, part_id: partId, quantity: 2 });
  return batchId;
}

function writeCans({ inserts, draw, at }: Shelf, outline: string): void {
  for (let half = 0; half < 12; half += 1) {
    const canId = inserts.insert('cans', { kind: 'steel', outline, height_nm: (84 + half) * 25_400 });
    for (let move = 0; move < 20; move += 1) {
      inserts.insert('can_movements', {
        can_id: canId,
        change: move === 0 ? 200 : -draw.whole(1, 8),
        reason: move === 0 ? 'laid out' : 'for a ticket',
        typed: '',
        batch_id: null,
        takes_back_id: null,
        moved_at: at,
        moved_by: 1,
      });
    }
  }
}

function writeSteel({ inserts, draw, at }: Shelf, index: number): void {
  const half = draw.whole(168, 200);
  const pieceId = inserts.insert('pieces', {
    kind: 'steel',
    outline: outlines[index % outlines.length] ?? '',
    tag: `S${index + 1}`,
    can_id: null,
    batch_id: null,
    added_at: at,
    added_by: 1,
  });
  inserts.insert('piece_heights', {
    piece_id: pieceId,
    height_nm: half * 12_700,
    height_from: 'measured',
    typed: (half / 2).toFixed(1),
    reason: '',
    micrometer: '',
    standard_uncertainty_nm: 2540,
    measured_at: at,
    measured_by: 1,
  });
  if (index % 5 === 0) {
    inserts.insert('piece_looks', {
      piece_id: pieceId,
      flat: 'flat',
      off_flat_nm: null,
      has_hot_spots: 0,
      is_glazed: 0,
      is_coned: 0,
      is_usable: index % 25 === 0 ? 0 : 1,
      note: '',
      looked_at: at,
      looked_by: 1,
    });
  }
}
