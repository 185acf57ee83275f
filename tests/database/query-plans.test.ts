// What SQLite means to do for the questions of the contract, as it says itself (EXPLAIN QUERY PLAN). It plans by the
// schema alone, so a small file tells what it would do in a large one.
import Sqlite from 'better-sqlite3';
import { expect, test } from 'vitest';
import type { Input, MethodName } from '../../app/contract/contract.ts';
import { openShop } from '../../main/database/open-shop.ts';
import { systemClock } from '../../main/ports/clock.ts';
import { dispatch } from '../../main/rpc/dispatch.ts';
import { Desk } from '../../main/shop/desk.ts';
import { answerOf, type YearsHost } from '../bench/years/years-host.ts';
import { inputsFrom, longActs, type ReadMethod } from '../bench/years/years-reads.ts';
import { growShop } from '../bench/years/years-shop.ts';
import { timeWrites } from '../bench/years/years-writes.ts';
import { temporaryFolder } from '../desk.ts';

const someWeeks = {
  name: 'some weeks',
  years: 1,
  builds: 40,
  moreGoes: 0.2,
  parts: 40,
  looseSteels: 40,
  pullsOfTicket: 3,
  photosOfTicket: 1,
};

/** What a shop has a few dozen of after twenty years. */
const small = new Set(
  `settings people families revisions stages stage_needs label_sizes money_terms photo_folder
  gauges gauge_lines line_gauges gauges_as_known studies study_parts study_people method_pairs`.split(/\s+/),
);

/** What is gone through all the same, and why that may be. */
const goneThrough: Readonly<Record<string, readonly string[]>> = {
  'a fragment is looked for in what is written, or the newest are shown': [
    'comebacks.findBuilds: jobs USING COVERING INDEX jobs_of_revision',
    'comebacks.suggestShared: batches',
    'comebacks.suggestShared: comebacks USING COVERING INDEX comebacks_of_build',
    'comebacks.suggestShared: findings',
    'customers.findCustomers: customers',
    'jobs.listJobs: jobs',
    'jobs.suggestParts: finding_cards USING INDEX finding_cards_by_part',
    'jobs.suggestParts: parts USING INDEX sqlite_autoindex_parts_1',
    'shop.findAnything: batches',
    'shop.findAnything: customers',
    'shop.findAnything: parts',
    'shop.findAnything: pieces',
    'shop.findAnything: units',
    'units.findUnits: units',
  ],
  'the answer is everything there is, or its sum': [
    'comebacks.fleetChoices: batches',
    'comebacks.fleetChoices: goings',
    'comebacks.fleetChoices: jobs USING COVERING INDEX jobs_of_revision',
    'comebacks.getCost: comeback_causes',
    'comebacks.getCost: comebacks USING COVERING INDEX comebacks_of_build',
    'comebacks.getCost: jobs USING COVERING INDEX jobs_of_revision',
    'comebacks.listComebacks: comebacks',
    'comebacks.listToCall: units_called',
    'comebacks.listToCall: units_to_call',
    'gauges.listGauges: gauge_checks',
    'packs.planSwaps: cans',
    'readings.getRepeatability: study_reads',
    'stock.exportCsv: batches',
    'stock.exportCsv: cans',
    'stock.exportCsv: movements',
    'stock.exportCsv: pieces USING INDEX pieces_of_outline',
    'stock.listCores: cores',
    'stock.listLoose: cans',
    'stock.listLoose: pieces USING COVERING INDEX pieces_of_outline',
    'stock.listLoose: pieces USING INDEX pieces_of_can',
    'stock.listLoose: slots',
    'stock.listOutlines: cans',
    'stock.listOutlines: piece_looks',
    'stock.listOutlines: pieces USING COVERING INDEX pieces_of_outline',
    'stock.listOutlines: slots',
    'stock.listParts: parts',
    'stock.listParts: parts USING INDEX sqlite_autoindex_parts_1',
    'stock.listPlateMoves: can_movements',
    'stock.listReorder: parts USING INDEX sqlite_autoindex_parts_1',
    'stock.listSuppliers: parts',
    'stock.previewCsv: batches USING COVERING INDEX batches_of_part',
    'stock.previewCsv: parts USING INDEX sqlite_autoindex_parts_1',
  ],
  'a comeback is one ticket in many': [
    'comebacks.listSharing: comebacks',
    'comebacks.listSharing: findings',
    'comebacks.trace: comebacks',
    'comebacks.trace: goings',
  ],
};

type Plan = { readonly method: ReadMethod; readonly scan: string };

/** Every question asked while `ask` runs, with who asked it. */
async function asking(ask: (by: (method: ReadMethod) => void) => Promise<void>): Promise<Map<string, ReadMethod>> {
  const asked = new Map<string, ReadMethod>();
  let asker: ReadMethod | undefined;
  const prepare = Sqlite.prototype.prepare;
  Sqlite.prototype.prepare = function (this: Sqlite.Database, text: string) {
    if (asker !== undefined && !asked.has(text)) asked.set(text, asker);
    return prepare.call(this, text);
  } as typeof prepare;
  try {
    await ask((method) => {
      asker = method;
    });
  } finally {
    Sqlite.prototype.prepare = prepare;
  }
  return asked;
}

test('no question but those named here goes through what grows with the years from one end to the other', async () => {
  const folder = temporaryFolder();
  const file = await growShop(someWeeks, folder);
  const desk = Desk.over(await openShop(file, 'write', systemClock), folder);
  const call = async <M extends MethodName>(method: M, input: Input<M>) =>
    answerOf(method, input, await dispatch(desk, method, input));
  const host: Pick<YearsHost, 'call' | 'timed'> = {
    call,
    timed: async (method, input) => ({ took: 0, reply: await dispatch(desk, method, input) }),
  };
  const onlooker = new Sqlite(file, { readonly: true });
  await timeWrites(host, onlooker, folder, 1);
  const inputs = inputsFrom(onlooker, folder);
  const asked = await asking(async (by) => {
    for (const method of Object.keys(inputs) as ReadMethod[]) {
      if (method in longActs || method === 'about.writeDiagnostics') continue;
      for (let turn = 0; turn < 6; turn += 1) {
        const input = inputs[method](turn);
        by(method);
        await dispatch(desk, method, input);
      }
    }
  });
  await desk.close();
  const scans = [...asked].flatMap(([text, method]) => scansOf(onlooker, text).map((scan): Plan => ({ method, scan })));
  onlooker.close();
  expect(asked.size).toBeGreaterThan(200);
  const told = [...new Set(scans.map(({ method, scan }) => `${method}: ${scan}`))].toSorted();
  const known = new Set(Object.values(goneThrough).flat());
  expect(told.filter((each) => !known.has(each))).toEqual([]);
}, 60_000);

function scansOf(file: Sqlite.Database, text: string): string[] {
  if (!/^\s*(select|with)/i.test(text)) return [];
  const plan = file
    .prepare<unknown[], { detail: string }>(`explain query plan ${text}`)
    .all(...(text.match(/\?/g) ?? []).map(() => null));
  return plan.flatMap(({ detail }) => {
    const name = /^SCAN (?<name>\S+)(?! VIRTUAL TABLE)(?<how>.*)$/.exec(detail)?.groups;
    if (name?.name === undefined || detail.includes('VIRTUAL TABLE') || small.has(name.name)) return [];
    return [`${name.name}${name.how}`];
  });
}
