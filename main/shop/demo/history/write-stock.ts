// The plates and parts of planted tickets put into the file: what lay in a pack, and the ledger.
import type { BulkInserts } from './bulk-inserts.ts';
import type { FamilyOnFile } from './family-on-file.ts';
import { type HistoryDesk, numbered, personOf } from './history-desk.ts';
import type { PlantedBatch, PlantedPlate, PlantedTicket } from './planted-ticket.ts';

/** Fluid is sold by the quart, frictions by the piece. */
const priced = {
  friction: { supplier: 'Brightwater Friction', unit_of_issue: 'each', bin: 'C6', cost_cents: 435, price_cents: 790 },
  fluid: { supplier: 'Ostrander Supply', unit_of_issue: 'quart', bin: 'drum', cost_cents: 390, price_cents: 850 },
} as const;

export class StockWriter {
  readonly #inserts: BulkInserts;
  readonly #desk: HistoryDesk;
  readonly #parts = new Map<string, number>();
  readonly #batches = new Map<string, number>();
  readonly #plates = new Map<string, number>();

  constructor(inserts: BulkInserts, desk: HistoryDesk) {
    this.#inserts = inserts;
    this.#desk = desk;
  }

  /** By their number in their pack; a ticket writes one pack down at most. */
  writeMockUps({ mockUps }: PlantedTicket, family: FamilyOnFile, jobId: number): number[] {
    return mockUps.map(({ pack, number, plates, hand, at }) => {
      const by = personOf(this.#desk, hand);
      const mockUpId = this.#inserts.insert('mock_ups', {
        job_id: jobId,
        pack_id: family.packId(pack),
        number,
        note: '',
        predicted_mean_nm: null,
        predicted_standard_deviation_nm: null,
        made_at: at,
        made_by: by,
      });
      for (const [index, slotId] of family.slotIds(pack).entries()) {
        const plate = plates[index];
        if (!plate) continue;
        const pieceId = numbered(this.#plates, plate.key, () => this.#writePlate(plate, by, at));
        this.#inserts.insert('mock_up_pieces', { mock_up_id: mockUpId, slot_id: slotId, piece_id: pieceId });
      }
      return mockUpId;
    });
  }

  #writePlate({ kind, outline, tag, typed, height_nm }: PlantedPlate, by: number, at: string): number {
    const pieceId = this.#inserts.insert('pieces', {
      kind,
      outline,
      tag,
      can_id: null,
      batch_id: null,
      added_at: at,
      added_by: by,
    });
    this.#inserts.insert('piece_heights', {
      piece_id: pieceId,
      height_nm,
      height_from: typed === null ? 'nominal' : 'measured',
      typed: typed ?? '',
      reason: '',
      micrometer: '',
      standard_uncertainty_nm: typed === null ? null : this.#desk.settings.micrometerUncertainty_nm,
      measured_at: at,
      measured_by: by,
    });
    return pieceId;
  }

  writePulls({ pulls }: PlantedTicket, family: FamilyOnFile, jobId: number): void {
    for (const { batch, quantity, hand, at } of pulls) {
      const by = personOf(this.#desk, hand);
      const batchId = numbered(this.#batches, batch.mark, () => this.#receive(batch, family, by));
      this.#inserts.insert('movements', {
        batch_id: batchId,
        kind: 'pull',
        change: -quantity,
        job_id: jobId,
        price_cents: priced[batch.part.kind].price_cents,
        reason: '',
        moved_at: at,
        moved_by: by,
      });
    }
  }

  #receive({ part, mark, receivedOn, received }: PlantedBatch, family: FamilyOnFile, by: number): number {
    const at = `${receivedOn}T14:00:00.000Z`;
    const partId = numbered(this.#parts, part.number, () => {
      const newId = this.#inserts.insert('parts', {
        number: part.number,
        description: part.description,
        kind: part.kind,
        ...priced[part.kind],
        core_charge_cents: null,
        reorder_point: null,
        reorder_quantity: null,
        is_retired: 0,
      });
      if (part.kind === 'friction') {
        this.#inserts.insert('part_families', { part_id: newId, family_id: family.familyId });
      }
      return newId;
    });
    const batchId = this.#inserts.insert('batches', {
      part_id: partId,
      kit_batch_id: null,
      mark,
      document: '',
      received_on: receivedOn,
      unit_cost_cents: priced[part.kind].cost_cents,
      received_at: at,
      received_by: by,
    });
    this.#inserts.insert('movements', {
      batch_id: batchId,
      kind: 'receive',
      change: received,
      job_id: null,
      price_cents: null,
      reason: '',
      moved_at: at,
      moved_by: by,
    });
    return batchId;
  }
}
