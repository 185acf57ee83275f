// One planted ticket put into the file, row by row, as the services would have put it.
import { rowOfAnswer } from '../../../jobs/lists.repository.ts';
import { rowOfReading, rowOfSetup } from '../../../readings/readings.repository.ts';
import { rowOfFigures } from '../../../readings/take-figures.repository.ts';
import type { BulkInserts } from './bulk-inserts.ts';
import type { FamilyOnFile } from './family-on-file.ts';
import { type HistoryDesk, numbered, personOf } from './history-desk.ts';
import type { PlantedTake, PlantedTicket } from './planted-ticket.ts';
import { StockWriter } from './write-stock.ts';
import { figuresOf, LineReader } from './written-reading.ts';

export class TicketWriter {
  readonly #inserts: BulkInserts;
  readonly #desk: HistoryDesk;
  readonly #lines: LineReader;
  readonly #stock: StockWriter;
  /** What was written already, by its key, and the number the file gave it. */
  readonly #jobs = new Map<number, number>();
  readonly #customers = new Map<number, number>();
  readonly #units = new Map<number, number>();
  readonly #setups = new Map<string, number>();

  constructor(inserts: BulkInserts, desk: HistoryDesk) {
    this.#inserts = inserts;
    this.#desk = desk;
    this.#lines = new LineReader(desk.settings);
    this.#stock = new StockWriter(inserts, desk);
  }

  write(ticket: PlantedTicket): void {
    const family = this.#desk.families.get(ticket.family);
    if (!family) throw new Error(`${ticket.family} is not on file`);
    const jobId = this.#openJob(ticket, family);
    this.#writeStages(ticket, jobId);
    this.#writeFindings(ticket, family, jobId);
    const mockUpIds = this.#stock.writeMockUps(ticket, family, jobId);
    for (const take of ticket.takes) this.#writeTake(take, family, jobId, mockUpIds);
    for (const { list, words, answer, hand, at } of ticket.answers) {
      const lineId = family.lineId(list, words);
      this.#inserts.insert(
        'list_answers',
        rowOfAnswer({ jobId, lineId, answer, reason: '', by: personOf(this.#desk, hand), now: at }),
      );
    }
    this.#stock.writePulls(ticket, family, jobId);
    for (const { check, reason, hand, at } of ticket.overrides) {
      this.#inserts.insert('overrides', {
        job_id: jobId,
        check_id: family.check(check).checkId,
        reason,
        overridden_at: at,
        overridden_by: personOf(this.#desk, hand),
      });
    }
    this.#handOver(ticket, jobId);
    this.#holdAgainst(ticket, family, jobId);
  }

  #openJob(ticket: PlantedTicket, family: FamilyOnFile): number {
    const { customer, unit, opened, distance } = ticket;
    const customerId = numbered(this.#customers, customer.key, () =>
      this.#inserts.insert('customers', { name: customer.name, phone: customer.phone, email: '', note: '' }),
    );
    const { serial, vehicle, use } = unit;
    const unitId = numbered(this.#units, unit.key, () =>
      this.#inserts.insert('units', { family_id: family.familyId, serial, vehicle, use }),
    );
    const jobId = this.#inserts.insert('jobs', {
      number: this.#desk.nextNumber + ticket.key - 1,
      customer_id: customerId,
      unit_id: unitId,
      revision_id: family.revisionId,
      case_tag: '',
      distance_amount: distance?.amount ?? null,
      distance_unit: distance?.unit ?? null,
      opened_at: opened.at,
      opened_by: personOf(this.#desk, opened.hand),
    });
    this.#jobs.set(ticket.key, jobId);
    this.#inserts.insert('intakes', {
      job_id: jobId,
      complaint: ticket.complaint,
      codes: '',
      fluid_level: 'not looked at',
      fluid_colour: 'not looked at',
      fluid_smell: 'not looked at',
      pan: '',
      installed_by: '',
      vehicle_changes: '',
      written_at: opened.at,
      written_by: personOf(this.#desk, opened.hand),
    });
    return jobId;
  }

  #writeStages({ kind, stages }: PlantedTicket, jobId: number): void {
    const stageId = (name: string) => {
      const known = this.#desk.stages.get(name);
      if (known === undefined) throw new Error(`there is no stage ${name}`);
      return known;
    };
    if (kind === 'reseal') {
      this.#inserts.insert('job_extents', { job_id: jobId, name: 'Reseal' });
      for (const { name } of stages) {
        this.#inserts.insert('job_extent_stages', { job_id: jobId, stage_id: stageId(name) });
      }
      this.#inserts.insert('job_extent_parts', { job_id: jobId, kind: 'check', name: 'Cooler flow in 30 s' });
    }
    for (const { name, hand, at } of stages) {
      this.#inserts.insert('stage_entries', {
        job_id: jobId,
        stage_id: stageId(name),
        entered_at: at,
        entered_by: personOf(this.#desk, hand),
      });
    }
  }

  #writeFindings({ findings }: PlantedTicket, family: FamilyOnFile, jobId: number): void {
    for (const { part, pack, place, condition, thickness, hand, at } of findings) {
      const by = personOf(this.#desk, hand);
      const findingId = this.#inserts.insert('findings', { job_id: jobId });
      this.#inserts.insert('finding_cards', {
        finding_id: findingId,
        part,
        pack_id: pack === null ? null : family.packId(pack),
        slot_id: null,
        place,
        condition,
        thickness_nm: thickness === '' ? null : Math.round(Number(thickness) * 25_400),
        thickness_typed: thickness,
        check_id: null,
        note: '',
        is_withdrawn: 0,
        reason: '',
        written_at: at,
        written_by: by,
      });
      this.#inserts.insert('finding_decisions', {
        finding_id: findingId,
        decision: 'replace',
        note: '',
        decided_at: at,
        decided_by: by,
      });
    }
  }

  #writeTake(take: PlantedTake, family: FamilyOnFile, jobId: number, mockUpIds: readonly number[]): void {
    const check = family.check(take.check);
    const by = personOf(this.#desk, take.hand);
    const { setup } = take;
    const takeId = this.#inserts.insert('takes', {
      job_id: jobId,
      check_id: check.checkId,
      phase: take.phase,
      mode: 'final',
      method: take.method,
      mock_up_id: take.mockUp === null ? null : (mockUpIds[take.mockUp] ?? null),
      setup_id:
        setup && numbered(this.#setups, JSON.stringify(setup), () => this.#inserts.insert('setups', rowOfSetup(setup))),
      note: '',
      started_at: take.at,
      started_by: by,
    });
    this.#inserts.insert('take_figures', rowOfFigures(takeId, figuresOf(check, take, this.#desk.settings)));
    const readingIds: number[] = [];
    for (const { spot, typed, puts } of take.readings) {
      const reading = this.#lines.read(check, take, typed);
      const supersedesId = puts === undefined ? null : (readingIds[puts.right] ?? null);
      const row = { takeId, spot, typed, reading, supersedesId, reason: puts?.reason ?? '', by, now: take.at };
      readingIds.push(this.#inserts.insert('readings', rowOfReading(row)));
    }
  }

  #handOver({ signedOff, delivery }: PlantedTicket, jobId: number): void {
    this.#inserts.insert('sign_offs', {
      job_id: jobId,
      place: 'in vehicle',
      note: '',
      signed_at: signedOff.at,
      signed_by: personOf(this.#desk, signedOff.hand),
    });
    const { to, on, distance, inServiceOn, months, passes, hand, at } = delivery;
    const by = personOf(this.#desk, hand);
    this.#inserts.insert('deliveries', {
      job_id: jobId,
      delivered_to: to,
      delivered_on: on,
      distance_amount: distance?.amount ?? null,
      distance_unit: distance?.unit ?? null,
      handed_over_by: by,
      reason: '',
      recorded_at: at,
      recorded_by: by,
    });
    this.#inserts.insert('warranties', {
      job_id: jobId,
      in_service_on: inServiceOn,
      months,
      distance_amount: null,
      distance_unit: null,
      passes,
      reason: '',
      set_at: at,
      set_by: by,
    });
  }

  #holdAgainst(
    { comeback, complaint, opened, distance, signedOff }: PlantedTicket,
    family: FamilyOnFile,
    jobId: number,
  ): void {
    if (comeback === null) return;
    const builtJobId = this.#jobs.get(comeback.built);
    if (builtJobId === undefined) throw new Error(`ticket ${comeback.built} is not written yet`);
    const by = personOf(this.#desk, opened.hand);
    const comebackId = this.#inserts.insert('comebacks', {
      job_id: jobId,
      built_job_id: builtJobId,
      logged_at: opened.at,
      logged_by: by,
    });
    this.#inserts.insert('comeback_cards', {
      comeback_id: comebackId,
      came_back_on: comeback.cameBackOn,
      customer_says: complaint,
      distance_amount: distance?.amount ?? null,
      distance_unit: distance?.unit ?? null,
      outcome: comeback.outcome,
      covered: comeback.covered,
      covered_note: '',
      cost_cents: comeback.cost_cents,
      note: '',
      reason: '',
      written_at: signedOff.at,
      written_by: by,
    });
    for (const { cause, pack, certainty } of comeback.causes) {
      this.#inserts.insert('comeback_causes', {
        comeback_id: comebackId,
        cause,
        pack_id: pack === null ? null : family.packId(pack),
        certainty,
        note: '',
        written_at: signedOff.at,
        written_by: by,
      });
    }
  }
}
