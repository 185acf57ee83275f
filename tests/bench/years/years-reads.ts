// Every question of the contract with real inputs out of a file, thirty times with different ones.
import type Sqlite from 'better-sqlite3';
import { type Contract, contract, type Input, type MethodName } from '../../../app/contract/contract.ts';
import packageJson from '../../../package.json' with { type: 'json' };
import { answerOf, type YearsHost } from './years-host.ts';

export type ReadMethod = { [M in MethodName]: Contract[M]['kind'] extends 'read' ? M : never }[MethodName];
export type Inputs = { [M in ReadMethod]: (turn: number) => Input<M> };

/** Acts that take their time in a worker or write a whole folder; a window says so meanwhile, and they are asked less. */
export const longActs: Partial<Record<ReadMethod, number>> = {
  'shop.exportEverything': 1,
  'backups.rehearse': 1,
  'comebacks.askFleet': 3,
  'jobs.exportJob': 5,
};

const zodVersion = packageJson.devDependencies.zod;
const words = ['pickup', 'slip', '7', 'kx3', 'brandvold', 'wq7-1', 'reverse', 'FB-', 'converter friday', 'van tow'];

/** Inputs for every question; the compiler holds that none is left out. */
export function inputsFrom(file: Sqlite.Database, folder: string): Inputs {
  const all = <T = number>(query: string) => file.prepare(query).pluck().all() as T[];
  /** Up to sixty of a table, from the first to the newest. */
  const spread = (table: string, id: string, where = 'true') => {
    const ids = all(`select ${id} from ${table} where ${where} order by ${id}`);
    if (ids.length === 0) throw new Error(`the file has no ${table} where ${where}`);
    const step = Math.max(1, ids.length / 60);
    const some = Array.from({ length: Math.min(60, ids.length) }, (_, place) => ids[Math.floor(place * step)] ?? 0);
    return (turn: number) => some[(turn * 7) % some.length] ?? 0;
  };
  const rows = <T>(query: string) => {
    const found = file.prepare(query).all() as T[];
    if (found.length === 0) throw new Error(`nothing is found by ${query}`);
    return (turn: number) => found[(turn * 7) % found.length] as T;
  };
  const by = { jobId: 0, checkId: 0 };
  const old = spread('jobs', 'job_id');
  const open = spread('jobs_in_stages', 'job_id', 'stage_id in (select stage_id from stages where is_closed = 0)');
  const jobId = (turn: number) => (turn % 2 === 0 ? open(turn) : old(turn));
  const job = (turn: number) => ({ jobId: jobId(turn) });
  const nothing = () => ({});
  const check = rows<typeof by>(
    `select job_id as jobId, check_id as checkId from takes where take_id % 97 = 0
     union select job_id, check_id from takes where job_id in
      (select job_id from jobs order by job_id desc limit 20)`,
  );
  const pack = rows<{ jobId: number; packId: number }>(
    `select distinct job_id as jobId, pack_id as packId from mock_ups order by job_id desc limit 120`,
  );
  const openPack = rows<{ jobId: number; packId: number }>(
    `select distinct job_id as jobId, pack_id as packId from mock_ups where job_id in
      (select job_id from jobs_in_stages join stages using (stage_id) where is_closed = 0)`,
  );
  const endPlay = rows<typeof by>(
    `select job_id as jobId, check_id as checkId from takes join checks using (check_id) join readings using (take_id)
     where checks.name = 'Front end play' order by take_id desc limit 30`,
  );
  const family = spread('families', 'family_id', 'family_id in (select family_id from units)');
  const unit = spread('units', 'unit_id');
  const serials = all<string>('select serial from units where unit_id % 31 = 0');
  const takeId = spread('takes', 'take_id');
  const outlines = all<string>(`select distinct outline from pieces where outline <> ''`);
  const outline = (turn: number) => outlines[turn % outlines.length] ?? '';
  const part = spread('parts', 'part_id');
  const batch = spread('batches', 'batch_id');
  const piece = spread('pieces', 'piece_id', `outline <> ''`);
  const can = spread('cans', 'can_id');
  const gauge = spread('gauges', 'gauge_id');
  const foundOut = spread('gauge_check_points', 'gauge_check_id', 'read_amount - nominal_amount > 25400');
  const finding = spread('findings_as_known', 'finding_id');
  const comebackId = spread('comebacks', 'comeback_id');
  const photoId = spread('photos', 'photo_id', 'removed_at is null');
  const lineId = spread('gauge_lines', 'gauge_line_id', 'is_retired = 0');
  const studyId = spread('studies', 'study_id');
  const newestPack = spread('packs', 'pack_id', 'pack_id in (select pack_id from mock_ups)');
  const pictures = all<string>('select sha256 from photos where removed_at is null limit 20');
  const numbers = all<string>('select number from parts');
  const revisions = rows<{ familyId: number; number: number }>('select family_id as familyId, number from revisions');
  const given = spread('estimates', 'job_id');
  const labelSizeId = spread('label_sizes', 'label_size_id');
  const text = (turn: number) => ({ text: words[turn % words.length] ?? '' });
  const copy = (turn: number) => (turn % 2 === 0 ? ('shop' as const) : ('customer' as const));
  const csv = ['number,description,kind', ...numbers.slice(0, 500).map((number) => `${number},seal,seal`)].join('\n');
  const sheet = { target: 'parts', text: csv, delimiter: null, mapping: null } as const;
  const objective = (turn: number) => (turn % 2 === 0 ? ('sum' as const) : ('largest' as const));
  return {
    'shop.exportEverything': () => ({ folder, withPhotos: false }),
    'shop.getExport': nothing,
    'shop.stopExport': nothing,
    'shop.findAnything': text,
    'shop.getShop': nothing,
    'backups.getBackups': nothing,
    'backups.rehearse': () => ({ file: '' }),
    'updates.getUpdates': nothing,
    'about.getAbout': nothing,
    'about.getLicence': () => ({ name: 'zod', version: zodVersion }),
    'about.writeDiagnostics': nothing,
    'customers.findCustomers': text,
    'units.findUnits': text,
    'specs.listSmallJobs': (turn) => ({ familyId: family(turn) }),
    'specs.listFamilies': nothing,
    'specs.getRevision': (turn) => (turn % 2 === 0 ? { familyId: family(turn) } : revisions(turn)),
    'specs.getPicture': (turn) => ({ sha256: pictures[turn % pictures.length] ?? '' }),
    'jobs.getMoneyTerms': nothing,
    'jobs.getEstimate': job,
    'jobs.printEstimate': (turn) => ({ jobId: given(turn), number: 1 }),
    'jobs.listStages': nothing,
    'jobs.listMissing': (turn) => ({ jobIds: Array.from({ length: 20 }, (_, place) => open(turn + place)) }),
    'jobs.listWithStock': job,
    'jobs.listIntakes': job,
    'jobs.listVisits': (turn) =>
      turn % 2 === 0
        ? { unitId: unit(turn), serial: '' }
        : { unitId: null, serial: serials[turn % serials.length] ?? '' },
    'jobs.listPromises': job,
    'jobs.listCalls': job,
    'jobs.getDelivery': job,
    'jobs.getHistory': job,
    'jobs.printBuildSheet': job,
    'jobs.printBenchSheet': (turn) => ({ of: { familyId: family(turn) } }),
    'jobs.listListsOfJob': job,
    'jobs.listFindings': job,
    'jobs.suggestParts': (turn) => ({ ...job(turn), text: ['bush', 'fr', 'seal', 'drum'][turn % 4] ?? '' }),
    'jobs.listJobs': (turn) => ({ ...(turn % 3 === 0 ? { text: '' } : text(turn)), includeClosed: turn % 2 === 0 }),
    'jobs.getJob': job,
    'jobs.printBuildReport': (turn) => ({ ...job(turn), copy: copy(turn) }),
    'jobs.exportJob': (turn) => ({ ...job(turn), folder }),
    'readings.lastSetup': check,
    'readings.latestTake': check,
    'readings.getTake': (turn) => ({ takeId: takeId(turn) }),
    'readings.listTakes': check,
    'readings.getRepeatability': nothing,
    'packs.getPack': pack,
    'packs.planSwaps': openPack,
    'packs.planUnit': (turn) => ({ jobId: openPack(turn).jobId, objective: objective(turn) }),
    'packs.printPullList': (turn) => ({ jobId: openPack(turn).jobId, objective: objective(turn), way: 'inOrder' }),
    'packs.planShim': (turn) => ({ ...endPlay(turn), shimIn: '66' }),
    'photos.listPhotos': job,
    'photos.getPhoto': (turn) => ({ photoId: photoId(turn), size: turn % 2 === 0 ? 'full' : 'small' }),
    'photos.getFolder': nothing,
    'photos.readFromFolder': () => ({ name: 'IMG_0001.jpg' }),
    'stock.listLoose': (turn) => ({ outline: turn % 3 === 0 ? '' : outline(turn) }),
    'stock.listOutlines': nothing,
    'stock.listPlates': (turn) => ({
      outline: outline(turn),
      text: turn % 3 === 0 ? '9' : '',
      state: turn % 2 === 0 ? null : 'free',
      offset: 0,
      limit: 200,
    }),
    'stock.listPlateMoves': (turn) => ({ outline: outline(turn), limit: 50 }),
    'stock.getPlate': (turn) => ({ pieceId: piece(turn) }),
    'stock.getReach': (turn) => ({ packId: newestPack(turn) }),
    'stock.listParts': (turn) => ({
      text: turn % 3 === 0 ? '' : (['se', 'bushing', 'M-1', 'KX3', '100'][turn % 5] ?? ''),
      kind: null,
      familyId: null,
      only: (['in use', 'low', 'retired'] as const)[turn % 3] ?? 'in use',
      offset: 0,
      limit: 200,
    }),
    'stock.listSuppliers': nothing,
    'stock.getPart': (turn) => ({ partId: part(turn) }),
    'stock.listPartsOfJob': job,
    'stock.listReorder': nothing,
    'stock.listCores': (turn) => (turn % 2 === 0 ? { includeSettled: false } : { includeSettled: true, ...job(turn) }),
    'stock.previewCsv': () => ({ ...sheet, show: 'all', offset: 0, limit: 100 }),
    'stock.exportCsv': (turn) => ({
      what: (['parts', 'batches', 'movements', 'plates', 'cans', 'reorder', 'cores'] as const)[turn % 7] ?? 'parts',
    }),
    'stock.printPurchaseList': nothing,
    'stock.listLabelSizes': nothing,
    'stock.printLabels': (turn) => ({
      labelSizeId: labelSizeId(0),
      labels: [{ of: { kind: 'part', partId: part(turn) }, copies: 4 }],
    }),
    'stock.trace': (turn) => ({
      of: [
        { kind: 'part' as const, partId: part(turn) },
        { kind: 'batch' as const, batchId: batch(turn) },
        { kind: 'can' as const, canId: can(turn) },
        { kind: 'plate' as const, pieceId: piece(turn) },
      ][turn % 4] ?? { kind: 'part', partId: part(turn) },
    }),
    'stock.findCode': (turn) => ({ code: numbers[(turn * 7) % numbers.length] ?? '' }),
    'indicators.listLines': nothing,
    'indicators.listPorts': nothing,
    'indicators.listTraces': (turn) => ({ takeId: takeId(turn) }),
    'indicators.hearLine': (turn) => ({ lineId: lineId(turn) }),
    'indicators.leaveLine': (turn) => ({ lineId: lineId(turn) }),
    'gauges.listGauges': nothing,
    'gauges.getGauge': (turn) => ({ gaugeId: gauge(turn) }),
    'gauges.lastGauge': (turn) => ({ ...job(turn), method: 'air' }),
    'gauges.listTouched': () => ({ gaugeCheckId: foundOut(0) }),
    'gauges.listStudies': nothing,
    'gauges.getStudy': (turn) => ({ studyId: studyId(turn) }),
    'gauges.compareMethods': () => ({ first: 'air', second: 'feeler' }),
    'gauges.chartCheck': (turn) => ({ familyId: family(turn), checkName: 'Front end play' }),
    'clutch.getClutch': pack,
    'comebacks.findBuilds': text,
    'comebacks.listComebacks': (turn) => ({ only: (['all', 'open', 'ours'] as const)[turn % 3] ?? 'all' }),
    'comebacks.getComeback': (turn) => ({ comebackId: comebackId(turn) }),
    'comebacks.listOfJob': job,
    'comebacks.suggestShared': (turn) =>
      turn % 2 === 0 ? { text: '' } : { text: ['FB', 'H1', 'Dial', 'burnt'][turn % 4] ?? '' },
    'comebacks.listSharing': (turn) => ({
      of: [
        { kind: 'batch' as const, batchId: batch(turn) },
        { kind: 'plate' as const, pieceId: piece(turn) },
        { kind: 'finding' as const, findingId: finding(turn) },
      ][turn % 3] ?? { kind: 'batch', batchId: batch(turn) },
    }),
    'comebacks.listToCall': nothing,
    'comebacks.exportToCall': nothing,
    'comebacks.printToCall': nothing,
    'comebacks.getCost': nothing,
    'comebacks.trace': (turn) => ({ comebackId: comebackId(turn) }),
    'comebacks.printReport': (turn) => ({ comebackId: comebackId(turn), copy: copy(turn) }),
    'comebacks.fleetChoices': (turn) => ({ familyId: turn % 2 === 0 ? null : family(turn) }),
    'comebacks.askFleet': () => ({
      familyId: family(0),
      packName: null,
      revision: null,
      cause: null,
      builderId: null,
      batchId: null,
      deliveredFrom: null,
      deliveredUntil: null,
      clock: 'days',
    }),
    'comebacks.stopAsking': nothing,
  };
}

/** Milliseconds of each call, by method; every one is asked twice before. */
export async function timeReads(host: YearsHost, inputs: Inputs, turns: number): Promise<Map<ReadMethod, number[]>> {
  const took = new Map<ReadMethod, number[]>();
  const { backups } = await host.call('backups.getBackups', {});
  for (const method of Object.keys(contract) as MethodName[]) {
    if (!isRead(method)) continue;
    const input = (turn: number): Input<typeof method> =>
      method === 'backups.rehearse' ? { file: backups[0]?.file ?? '' } : inputs[method](turn);
    const times: number[] = [];
    const wanted = longActs[method] ?? turns;
    for (let turn = -Math.min(2, wanted - 1); turn < wanted; turn += 1) {
      const { took: time, reply } = await host.timed(method, input(turn + 2));
      // Not every machine tells which ports it has.
      if (method !== 'indicators.listPorts') answerOf(method, input(turn + 2), reply);
      if (turn >= 0) times.push(time);
    }
    took.set(method, times);
  }
  return took;
}

function isRead(method: MethodName): method is ReadMethod {
  return contract[method].kind === 'read';
}
