// Packs that share plates, beside HiGHS: comfortable bins, scarce ones, ten packs, and what is settled of fresh seeds.
import { selectPlatesJointly } from '../../app/selection/select-plates-jointly.ts';
import { problemsInJointSelection } from '../../app/selection/verify.ts';
import { jointModel } from './highs-models.ts';
import { timedSolver } from './highs-worker.ts';
import { type BinKind, binKinds, jointInstance } from './joint-instances.ts';
import { median, milliseconds, printTable, timed } from './measure.ts';

const seeds = 20;
const alsoSolvedByHighs = 3;
const highsSeconds = 5;

/** Returns whether every optimum agreed. */
export async function benchJointly(): Promise<boolean> {
  console.log(
    `\nPacks of six plates that share one bin, smallest sum of |deviation|, ${seeds} seeds a row, each seen once.`,
  );
  console.log(
    `HiGHS gets the first ${alsoSolvedByHighs} and at most ${highsSeconds} s each; the ratio is of the medians over those same instances.`,
  );
  console.log(
    'Settled: proven optimal or proven impossible, by sum and by largest deviation first; otherwise a bound is given.',
  );
  for (let seed = 9000; seed < 9020; seed++)
    for (const kind of binKinds) selectPlatesJointly(jointInstance(kind, 2, seed));
  const solver = timedSolver(highsSeconds);
  await solver.solve(jointModel(jointInstance('60 plates', 2, 9000)));
  let agrees = true;
  const rows: string[][] = [];
  for (const kind of binKinds) {
    for (const packs of [2, 4, 10]) {
      // Sixty plates for ten packs of six is the row "exactly enough".
      if (kind === '60 plates' && packs === 10) continue;
      const { row, isSame } = await benchRow(kind, packs, solver.solve);
      rows.push(row);
      agrees &&= isSame;
    }
  }
  await solver.close();
  printTable(
    ['bin', 'packs', 'ours ms', 'max', 'HiGHS ms', 'max', 'ratio', 'settled: sum', 'largest', 'widest bound'],
    rows,
  );
  return agrees;
}

async function benchRow(kind: BinKind, packs: number, solve: ReturnType<typeof timedSolver>['solve']) {
  const instances = Array.from({ length: seeds }, (_, place) => jointInstance(kind, packs, packs * 1000 + place));
  const runs = instances.map((instance) => timed(() => selectPlatesJointly(instance)));
  let isSame = true;
  let settled = 0;
  let widest = '';
  let gap = 0;
  const values = runs.map(({ value }, place) => {
    if (!value.ok) throw new Error(value.refusal.message);
    const selection = value.value;
    const wrong = problemsInJointSelection(instances[place]!, selection);
    if (wrong.length > 0) {
      isSame = false;
      console.log(`  WRONG: ${kind}, ${packs} packs, instance ${place}: ${wrong.join(' ')}`);
    }
    if (selection.status === 'BudgetExhausted') {
      const best = selection.best?.sum ?? Number.POSITIVE_INFINITY;
      if (best - selection.bound > gap) {
        gap = best - selection.bound;
        widest = `${selection.bound} to ${selection.best?.sum ?? '?'}`;
      }
      return { least: selection.bound, most: best };
    }
    settled++;
    const sum = selection.status === 'Optimal' ? selection.sum : Number.POSITIVE_INFINITY;
    return { least: sum, most: sum };
  });
  const largestSettled = instances.filter((instance) => {
    const selection = selectPlatesJointly({ ...instance, objective: 'largest' });
    return selection.ok && selection.value.status !== 'BudgetExhausted';
  }).length;
  const theirs: number[] = [];
  for (let place = 0; place < alsoSolvedByHighs; place++) {
    const solved = await solve(jointModel(instances[place]!));
    theirs.push(solved.milliseconds);
    if (solved.objective === 'out of time') continue;
    const objective = solved.objective === 'infeasible' ? Number.POSITIVE_INFINITY : solved.objective;
    const { least, most } = values[place]!;
    if (objective >= least && objective <= most) continue;
    isSame = false;
    console.log(
      `  DIFFERENT: ${kind}, ${packs} packs, instance ${place}: ours ${least} to ${most}, HiGHS ${objective}`,
    );
  }
  const times = runs.map((run) => run.milliseconds);
  const ratio = median(theirs) / median(times.slice(0, alsoSolvedByHighs));
  const row = [
    kind,
    `${packs}`,
    milliseconds(median(times)),
    milliseconds(Math.max(...times)),
    milliseconds(median(theirs)),
    milliseconds(Math.max(...theirs)),
    `${ratio < 10 ? ratio.toFixed(1) : Math.round(ratio)} ×`,
    `${settled} of ${seeds}`,
    `${largestSettled} of ${seeds}`,
    widest,
  ];
  return { row, isSame };
}
