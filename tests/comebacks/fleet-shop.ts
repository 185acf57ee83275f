// A shop file with delivered builds that a test says in one line each, written row by row: years of them at once.
import { openConnection } from '../../main/database/connection.ts';
import { shopWithKx3 } from '../desk.ts';

/** The day the clock of the tests stands on. */
export const today = '2026-11-23';

export type BuildToMake = {
  readonly deliveredOn: string;
  readonly inServiceOn?: string | null;
  readonly months?: number | null;
  readonly distance?: number;
  readonly use?: 'street' | 'tow' | 'competition';
  readonly by?: number;
  /** Amounts of checks by name, in base units, each read once. */
  readonly read?: Readonly<Record<string, number>>;
  readonly visits?: ReadonlyArray<{
    readonly on: string;
    readonly distance?: number;
    /** Left out: an ordinary job. */
    readonly outcome?: string;
    readonly causes?: ReadonlyArray<readonly [cause: string, pack: string | null, certainty: string]>;
  }>;
};

export function daysBefore(day: string, days: number): string {
  return new Date(Date.parse(day) - days * 86_400_000).toISOString().slice(0, 10);
}

/** A shop with the KX3 sheet and these builds, in this order; `Ines Marsh` is person 2. */
export async function shopWithBuilds(builds: readonly BuildToMake[]) {
  const at = await shopWithKx3();
  await at.call('shop.addPerson', { name: 'Ines Marsh', initials: 'IM' });
  const file = openConnection(at.desk.shop().file, 'write');
  const insert = (table: string, row: Readonly<Record<string, unknown>>): number => {
    const columns = Object.keys(row);
    const places = columns.map(() => '?').join(',');
    const statement = file.prepare(`insert into ${table} (${columns.join(',')}) values (${places})`);
    return Number(statement.run(...Object.values(row)).lastInsertRowid);
  };
  const idOf = (sql: string, ...given: unknown[]) =>
    file
      .prepare(sql)
      .pluck()
      .get(...given) as number;
  const revision_id = idOf('select max(revision_id) from revisions');
  const closed = file.prepare('select stage_id from stages where is_closed = 1').pluck().get();
  const customer_id = insert('customers', { name: 'Tam Okoro', phone: '', email: '', note: '' });
  let number = 0;
  const openJob = (unit_id: number, day: string, distance?: number) => {
    number += 1;
    const on = distance === undefined ? {} : { distance_amount: distance, distance_unit: 'miles' };
    const opened = { opened_at: `${day}T12:00:00.000Z`, opened_by: 1 };
    const job_id = insert('jobs', { number, customer_id, unit_id, revision_id, case_tag: '', ...on, ...opened });
    insert('stage_entries', { job_id, stage_id: closed, entered_at: opened.opened_at, entered_by: 1 });
    return job_id;
  };
  const make = (build: BuildToMake) => {
    const day = build.deliveredOn;
    const stamp = `${day}T12:00:00.000Z`;
    const by = build.by ?? 1;
    const unit = { family_id: at.familyId, serial: '', vehicle: '', use: build.use ?? 'street' };
    const unit_id = insert('units', unit);
    const job_id = openJob(unit_id, day);
    for (const [name, amount] of Object.entries(build.read ?? {})) {
      const check_id = idOf('select check_id from checks where name = ?', name);
      const method = file.prepare('select method from checks where check_id = ?').pluck().get(check_id);
      const take = {
        job_id,
        check_id,
        phase: 'final',
        mode: 'final',
        method,
        note: '',
        started_at: stamp,
        started_by: by,
      };
      const take_id = insert('takes', take);
      insert('take_figures', {
        take_id,
        hand_force_half_width_nm: 0,
        base_on_pump_half_width_nm: 0,
        dial_resolution_nm: 1,
        micrometer_uncertainty_nm: 1,
        repeat_limit_nm: 1,
        uneven_limit_nm: 1,
        decision_rule: 'simple',
      });
      insert('readings', { take_id, spot: 1, method, typed: String(amount), amount, taken_at: stamp, taken_by: by });
    }
    const on = build.distance === undefined ? {} : { distance_amount: build.distance, distance_unit: 'miles' };
    const recorded = { reason: '', recorded_at: stamp, recorded_by: 1 };
    insert('deliveries', {
      job_id,
      delivered_to: 'Tam Okoro',
      delivered_on: day,
      ...on,
      handed_over_by: 1,
      ...recorded,
    });
    const in_service_on = build.inServiceOn === undefined ? day : build.inServiceOn;
    const months = build.months === undefined ? 120 : build.months;
    insert('warranties', { job_id, in_service_on, months, reason: '', set_at: stamp, set_by: 1 });
    for (const visit of build.visits ?? []) {
      const again = openJob(unit_id, visit.on, visit.distance);
      if (visit.outcome === undefined) continue;
      const at_ = `${visit.on}T12:00:00.000Z`;
      const logged = { job_id: again, built_job_id: job_id, logged_at: at_, logged_by: 1 };
      const comeback_id = insert('comebacks', logged);
      const said = { came_back_on: visit.on, customer_says: '', outcome: visit.outcome, covered: 'in warranty' };
      const more = { covered_note: '', note: '', reason: '', written_at: at_, written_by: 1 };
      insert('comeback_cards', { comeback_id, ...said, ...more });
      for (const [cause, pack, certainty] of visit.causes ?? []) {
        const pack_id = pack === null ? null : idOf('select pack_id from packs where name = ?', pack);
        insert('comeback_causes', { comeback_id, cause, pack_id, certainty, note: '', written_at: at_, written_by: 1 });
      }
    }
    return job_id;
  };
  const jobIds = file.transaction(() => builds.map(make))();
  file.close();
  const ask = (selection: object = {}) => at.call('comebacks.askFleet', { ...everything(at.familyId), ...selection });
  return { ...at, jobIds, ask };
}

export function everything(familyId: number) {
  return {
    familyId,
    packName: null,
    revision: null,
    cause: null,
    builderId: null,
    batchId: null,
    deliveredFrom: null,
    deliveredUntil: null,
    clock: 'days',
  };
}
