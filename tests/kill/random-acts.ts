// Acts of a shop's day, drawn at random, each with the rows that it writes when it is whole: counted by hand.
import type Sqlite from 'better-sqlite3';
import type { Input, MethodName } from '../../app/contract/contract.ts';
import { usualSetup } from '../../main/shop/demo/kx3-job.ts';
import type { Draw } from '../bench/seeded.ts';
import { greyJpeg } from '../photos/small-jpeg.ts';

/** How many rows each table gains; a table that is not named gains none. */
export type Rows = Readonly<Record<string, number>>;

export type RandomAct = {
  readonly method: MethodName;
  readonly input: unknown;
  readonly writes: Rows;
};

/** Sees what is in the file, to find something to act on. */
type Look = {
  /** One of the numbers that `query` answers, at random; undefined when there is none. */
  one(query: string, ...given: unknown[]): number | undefined;
  all(query: string, ...given: unknown[]): number[];
};

function act<M extends MethodName>(method: M, input: Input<M>, writes: Rows): RandomAct {
  return { method, input, writes };
}

const by = 1;
const today = (): string => new Date().toISOString().slice(0, 10);

// Closed by being handed over; such a job takes no more work.
const openJob = 'select job_id from jobs where job_id not in (select job_id from deliveries)';
const checkCalled = 'select check_id from checks join revisions using (revision_id) where checks.name = ?';
const onShelf =
  'select batch_id from batches join parts using (part_id) join movements using (batch_id) where parts.kind = ? group by batch_id having sum(change) >= 2';

function checkIn(serial: number) {
  return {
    complaint: 'Slips 2–3 when hot.',
    caseTag: '',
    distance: { amount: 118_400, unit: 'miles' as const },
    customer: { name: `Customer ${serial}`, phone: '555 0117', email: '' },
    unit: { familyId: 1, serial: `KX3-${serial}`, vehicle: '', use: 'tow' as const },
  };
}

const drawn: ReadonlyArray<(look: Look, draw: Draw) => RandomAct | undefined> = [
  (_, draw) =>
    act(
      'jobs.checkIn',
      { ...checkIn(draw.whole(1, 1_000_000_000)), by },
      { customers: 1, units: 1, jobs: 1, intakes: 1, jobs_in_stages: 1, stage_entries: 1 },
    ),
  (look) => {
    const jobId = look.one(openJob);
    const checkId = look.one(checkCalled, 'Forward clearance');
    if (!jobId || !checkId) return undefined;
    const take = { jobId, checkId, phase: 'as found', mode: 'final', setup: usualSetup, note: '', by } as const;
    return act('readings.startTake', take, { setups: 1, takes: 1, take_figures: 1 });
  },
  (look, draw) => {
    const takeId = look.one(
      `select take_id from takes where job_id in (${openJob}) and take_id not in
        (select take_id from readings group by take_id having count(distinct spot) = 4)`,
    );
    if (!takeId) return undefined;
    const spot = look.one(
      `select value from json_each('[1, 2, 3, 4]')
        where value not in (select spot from readings where take_id = ?) limit 1`,
      takeId,
    );
    if (!spot) return undefined;
    const typed = `${draw.whole(3, 6)} ${draw.whole(20, 40)}`;
    return act('readings.recordReading', { takeId, spot, typed, by }, { readings: 1 });
  },
  (look, draw) => {
    const readingId = look.one(
      `select reading_id from readings join takes using (take_id) where job_id in (${openJob})
        and reading_id not in (select supersedes_id from readings where supersedes_id is not null)`,
    );
    if (!readingId) return undefined;
    const typed = `${draw.whole(3, 6)} ${draw.whole(20, 40)}`;
    return act('readings.supersedeReading', { readingId, typed, reason: 'misread', by }, { readings: 1 });
  },
  (look) => {
    const jobId = look.one(openJob);
    const packId = look.one("select pack_id from packs where name = 'Forward'");
    if (!jobId || !packId) return undefined;
    const isFirst = !look.one('select mock_up_id from mock_ups where job_id = ? and pack_id = ?', jobId, packId);
    if (!isFirst) return undefined;
    const heights = { steel: '77.0', friction: '80.0', 'backing plate': '250.0' };
    const typed = Object.entries(heights).flatMap(([kind, height]) =>
      look.all('select slot_id from slots where pack_id = ? and kind = ?', packId, kind).map((slotId) => ({
        slotId,
        from: { typed: height },
      })),
    );
    const each = typed.length;
    const pieces = { mock_ups: 1, mock_up_pieces: each, pieces: each, piece_heights: each };
    return act('packs.recordMockUp', { jobId, packId, pieces: typed, note: '', by }, pieces);
  },
  (look) => {
    const jobId = look.one(openJob);
    const checkId = look.one(checkCalled, 'Front end play');
    if (!jobId || !checkId) return undefined;
    if (look.one('select job_id from overrides where job_id = ? and check_id = ?', jobId, checkId)) return undefined;
    return act('jobs.overrideCheck', { jobId, checkId, reason: 'as the customer wants it', by }, { overrides: 1 });
  },
  (look) => {
    const jobId = look.one(openJob);
    if (!jobId) return undefined;
    const finding = {
      part: 'pump bushing',
      packId: null,
      slotId: null,
      place: null,
      condition: 'worn',
      checkId: null,
      note: '',
      thickness: '',
    } as const;
    return act(
      'jobs.recordFinding',
      { jobId, finding, decision: 'replace', by },
      { findings: 1, finding_cards: 1, finding_decisions: 1 },
    );
  },
  (look) => {
    const findingId = look.one(`select finding_id from findings where job_id in (${openJob})`);
    if (!findingId) return undefined;
    return act('jobs.decideFinding', { findingId, decision: 'reuse', note: '', by }, { finding_decisions: 1 });
  },
  (look) => {
    const jobId = look.one(openJob);
    const lineId = look.one('select list_line_id from list_lines');
    if (!jobId || !lineId) return undefined;
    const answer = { kind: 'does not apply' } as const;
    return act('jobs.answerLine', { jobId, lineId, answer, by }, { list_answers: 1 });
  },
  (look) => {
    const jobId = look.one(openJob);
    // Enough is left open to work on.
    if (!jobId || !look.one(`${openJob} limit 1 offset 3`)) return undefined;
    const warranty = { terms: { months: 12, distance: null, passes: null }, inServiceOn: today() };
    return act(
      'jobs.deliver',
      {
        jobId,
        deliveredTo: 'Tam Okoro',
        deliveredOn: today(),
        distance: null,
        handedOverById: by,
        warranty,
        by,
        reason: 'they know what is open',
      },
      { deliveries: 1, warranties: 1, stage_entries: 1, needs_passed_over: 1 },
    );
  },
  (look) => {
    const jobId = look.one(openJob);
    if (!jobId) return undefined;
    const line = {
      kind: 'labour',
      description: 'Rebuild',
      quantity: '18',
      unitPrice: '115.00',
      unitCost: '',
      isTaxable: false,
      batchId: null,
    } as const;
    return act('jobs.addLine', { jobId, line, by }, { job_lines: 1 });
  },
  (look) => {
    const jobId = look.one(`select distinct job_id from job_lines where job_id in (${openJob})`);
    if (!jobId) return undefined;
    const lines = look.one('select count(*) from job_lines where job_id = ?', jobId) ?? 0;
    return act('jobs.giveEstimate', { jobId, whatWasFound: '', by }, { estimates: 1, estimate_lines: lines });
  },
  (look) => {
    const estimateId = look.one(`select max(estimate_id) from estimates where job_id in (${openJob}) group by job_id`);
    if (!estimateId) return undefined;
    const approval = {
      estimateId,
      approvedBy: 'Tam Okoro',
      how: 'phone',
      upTo: '',
      approvedOn: null,
      note: '',
    } as const;
    return act('jobs.approveEstimate', { ...approval, by }, { approvals: 1 });
  },
  (look, draw) => {
    const partId = look.one('select part_id from parts');
    if (!partId) return undefined;
    const isKit = look.one("select part_id from parts where part_id = ? and kind = 'kit'", partId) !== undefined;
    const mark = `B-${draw.whole(1, 1_000_000_000)}`;
    const received = { receivedOn: today(), mark, document: '', unitCost: '' };
    return act(
      'stock.receiveBatch',
      { partId, quantity: 20, ...received, by },
      // What lies in a kit is written down with its batch: frictions and seals.
      { batches: 1, movements: 1, ...(isKit ? { kit_batch_lines: 2 } : {}) },
    );
  },
  (look) => {
    const jobId = look.one(openJob);
    const batchId = look.one(onShelf, 'friction');
    const partId = look.one("select part_id from parts where kind = 'friction'");
    if (!jobId || !batchId || !partId) return undefined;
    return act('stock.pullForJob', { jobId, partId, batchId, quantity: 2, by }, { movements: 1 });
  },
  (look) => {
    const batchId = look.one(
      `select batch_id from movements join batches using (batch_id) join parts using (part_id)
        where job_id in (${openJob}) and parts.kind = 'friction' group by batch_id, job_id having sum(change) < 0`,
    );
    if (!batchId) return undefined;
    const jobId = look.one(
      `select job_id from movements where batch_id = ? and job_id in (${openJob}) group by job_id having sum(change) < 0`,
      batchId,
    );
    if (!jobId) return undefined;
    return act('stock.returnFromJob', { jobId, batchId, partId: null, quantity: 1, by }, { movements: 1 });
  },
  (look) => {
    const batchId = look.one(onShelf, 'kit');
    if (!batchId) return undefined;
    // The kit leaves, and frictions and seals are laid in; a kit of the same batch before it has made their batches.
    const batches = look.one('select batch_id from batches where kit_batch_id = ?', batchId) ? 0 : 2;
    return act('stock.openKit', { batchId, quantity: 1, by }, { batches, movements: 3 });
  },
  (_, draw) => {
    const tag = `D${draw.whole(1, 1_000_000_000)}`;
    const card = { kind: 'dial plunger', tag, unit: 'thou', resolution: '1', permittedError: '0.5' } as const;
    const rest = { statedIn: 'certificate', offSquareDegrees: 5, serial: '', intervalDays: 90, by };
    return act('gauges.saveGauge', { gaugeId: null, ...card, ...rest }, { gauges: 1, gauge_cards: 1 });
  },
  (look) => {
    const gaugeId = look.one('select gauge_id from gauges');
    if (!gaugeId) return undefined;
    const points = [
      { nominal: '10', read: '10' },
      { nominal: '50', read: '50' },
    ];
    return act(
      'gauges.recordCheck',
      { gaugeId, against: 'blocks', checkedOn: today(), points, note: '', by },
      { gauge_checks: 1, gauge_check_points: 2 },
    );
  },
  (look, draw) => {
    const builtJobId = look.one('select job_id from deliveries');
    if (!builtJobId) return undefined;
    const said = { customerSays: 'Slips again.', distance: null, covered: 'in warranty', coveredNote: '' } as const;
    const { customer: _, unit: __, ...door } = checkIn(draw.whole(1, 1_000_000_000));
    const customerId = look.one('select customer_id from jobs where job_id = ?', builtJobId) ?? 0;
    const unitId = look.one('select unit_id from jobs where job_id = ?', builtJobId) ?? 0;
    const ticket = { checkIn: { ...door, customer: { customerId }, unit: { unitId } } };
    return act(
      'comebacks.logComeback',
      { builtJobId, ticket, cameBackOn: today(), ...said, by },
      { jobs: 1, intakes: 1, jobs_in_stages: 1, stage_entries: 1, comebacks: 1, comeback_cards: 1 },
    );
  },
  (look) => {
    const comebackId = look.one('select comeback_id from comebacks');
    if (!comebackId) return undefined;
    const said = { cause: 'too tight', packId: null, certainty: 'suspected', note: '' } as const;
    return act('comebacks.sayCause', { comebackId, ...said, by }, { comeback_causes: 1 });
  },
  (look) => {
    // The same picture twice would be kept once.
    const jobId = look.one(`${openJob} and job_id not in (select job_id from photos)`);
    if (!jobId) return undefined;
    const jpegBase64 = greyJpeg.toString('base64');
    const kept = { jpegBase64, smallBase64: jpegBase64, caption: 'Pan', folderName: null };
    return act('photos.addPhoto', { jobId, ...kept, by }, { photos: 1 });
  },
];

/** The next act; what finds nothing to act on is drawn again. */
export function nextAct(connection: Sqlite.Database, draw: Draw): RandomAct {
  const all: Look['all'] = (query, ...given) => {
    return connection.prepare(query).pluck().all(given) as number[];
  };
  const look: Look = {
    all,
    one: (query, ...given) => {
      const found = all(query, ...given);
      return found[draw.whole(0, found.length - 1)];
    },
  };
  for (;;) {
    const next = drawn[draw.whole(0, drawn.length - 1)]?.(look, draw);
    if (next) return next;
  }
}
