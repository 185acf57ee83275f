// Whether the book stays quick: every question and every act of a day on files of one, five and twenty years and on one
// far beyond. Needs `npm run build` first.
import { rmSync } from 'node:fs';
import { loadavg } from 'node:os';
import Sqlite from 'better-sqlite3';
import { median, milliseconds, printTable, quantile } from '../measure.ts';
import { startHost, takeBuilt } from './years-host.ts';
import { inputsFrom, longActs, type ReadMethod, timeReads } from './years-reads.ts';
import { type Size, shopOf, sizes } from './years-shop.ts';
import { sayHeldLoop, sayStart } from './years-start.ts';
import { timeWrites, type WriteMethod } from './years-writes.ts';

const turns = 30;
const limits = { read_ms: 50, write_ms: 20, loop_ms: 50, host_MB: 250 } as const;
/** What a day at the counter and the bench asks most. */
const hot: readonly ReadMethod[] = [
  'jobs.getJob',
  'jobs.listJobs',
  'shop.findAnything',
  'readings.latestTake',
  'packs.getPack',
  'packs.planSwaps',
  'stock.listParts',
  'stock.listPlates',
  'comebacks.trace',
  'jobs.printBuildReport',
];

type Measured = {
  readonly size: Size;
  readonly reads: ReadonlyMap<ReadMethod, readonly number[]>;
  readonly writes: ReadonlyMap<WriteMethod, readonly number[]>;
};

/** Prints what comes out; there is nothing to agree on. */
export async function benchYears(): Promise<boolean> {
  console.log('\nTwenty years of records');
  if (!takeBuilt()) {
    console.log('not measured: npm run build first');
    return true;
  }
  const measured: Measured[] = [];
  const asked = process.env.SIZES?.split(',');
  for (const size of sizes) if (asked?.includes(size.name) ?? true) measured.push(await measure(size));
  sayGrowth(measured);
  return true;
}

async function measure(size: Size): Promise<Measured> {
  const { folder, file } = await shopOf(size);
  const host = await startHost(folder);
  const onlooker = new Sqlite(file, { readonly: true });
  try {
    const count = (table: string) => Number(onlooker.prepare(`select count(*) from ${table}`).pluck().get());
    const rows = ['jobs', 'readings', 'movements', 'pieces', 'photos', 'comebacks'];
    console.log(`\n${size.name}: ${rows.map((table) => `${count(table).toLocaleString('en')} ${table}`).join(', ')}`);
    await host.call('backups.makeBackup', {});
    const writes = await timeWrites(host, onlooker, folder, turns);
    const inputs = inputsFrom(onlooker, folder);
    await sayHeldLoop(host, inputs);
    const reads = await timeReads(host, inputs, turns);
    const { now_bytes, most_bytes } = await host.pulse();
    console.log(
      `  Host ${megabytes(now_bytes)} MB now, ${megabytes(most_bytes)} MB at most. Load ${loadavg()
        .map((each) => each.toFixed(1))
        .join(', ')}.`,
    );
    saySlow('writes', writes, limits.write_ms);
    saySlow('reads', reads, limits.read_ms);
    return { size, reads, writes };
  } finally {
    onlooker.close();
    await host.stop();
    await sayStart(folder);
    rmSync(folder, { recursive: true, force: true });
  }
}

/** All that take more than half of what they may. */
function saySlow(what: string, took: ReadonlyMap<string, readonly number[]>, limit_ms: number): void {
  const all = [...took].filter(([method]) => !(method in longActs));
  const medians = all.map(([, times]) => median(times));
  const over = all.filter(([, times]) => quantile(times, 0.95) > limit_ms);
  console.log(
    `  ${all.length} ${what}: median of the medians ${milliseconds(median(medians))} ms, ${over.length} over ${limit_ms} ms at p95.`,
  );
  const near = [...took].filter(([method, times]) => method in longActs || quantile(times, 0.95) > limit_ms / 2);
  if (near.length === 0) return;
  printTable(
    ['near or over', 'median ms', 'p95 ms'],
    near
      .toSorted(([, a], [, b]) => quantile(b, 0.95) - quantile(a, 0.95))
      .map(([method, times]) => [
        `${method}${method in longActs ? ` (× ${times.length})` : ''}`,
        milliseconds(median(times)),
        milliseconds(quantile(times, 0.95)),
      ]),
  );
}

function sayGrowth(measured: readonly Measured[]): void {
  console.log('\nGrowth, median ms (p95):');
  printTable(
    ['', ...measured.map(({ size }) => size.name)],
    hot.map((method) => [
      method,
      ...measured.map(({ reads }) => {
        const times = reads.get(method) ?? [];
        return `${milliseconds(median(times))} (${milliseconds(quantile(times, 0.95))})`;
      }),
    ]),
  );
}

function megabytes(bytes: number): string {
  return (bytes / 1e6).toFixed(0);
}
