// Next swaps for every number of changes, six slots, beside HiGHS on the same instances.

import loadHighs from 'highs';
import { nextSwaps } from '../../app/selection/next-swaps.ts';
import type { SwapQuestion } from '../../app/selection/swap-question.ts';
import { problemsInSwaps } from '../../app/selection/verify.ts';
import { normalBetween } from '../../app/statistics/normal.ts';
import { type Highs, solveSwaps } from './highs-models.ts';
import { median, milliseconds, printTable, timed } from './measure.ts';
import { seeded } from './seeded.ts';

const slots = 6;
const instances = 101;
const alsoSolvedByHighs = 15;

/** Heights in tenths of a thou: six steels in, so many loose, a band of ± 2.5 thou around the target. */
export type SwapInstance = {
  readonly fitted: readonly number[];
  readonly loose: readonly number[];
  readonly space: number;
  readonly target: number;
};

export function swapInstance(seed: number, plates: number): SwapInstance {
  const draw = seeded(seed);
  const height = () => draw.whole(650, 900);
  const fitted = Array.from({ length: slots }, height);
  const loose = Array.from({ length: plates }, height);
  const clearanceNow = 350 + draw.whole(-150, 150);
  return { fitted, loose, space: fitted.reduce((sum, each) => sum + each, clearanceNow), target: 350 };
}

export function questionOf({ fitted, loose, space, target }: SwapInstance): SwapQuestion {
  const standardDeviation = 8;
  const lower = target - 25;
  const upper = target + 25;
  return {
    groups: [
      {
        name: 'steels',
        fitted: fitted.map((height, place) => ({ id: `slot ${place + 1}`, height })),
        loose: loose.map((height, place) => ({ id: `loose ${place + 1}`, height, count: 1, uncertaintyClass: 0 })),
      },
    ],
    predict: (inPack) => ({
      spaceLeft: fitted.reduce((left, height, place) => left - ((inPack >> place) & 1) * height, space),
      variance: standardDeviation ** 2,
    }),
    band: {
      lower,
      upper,
      chance: (mean, variance) =>
        normalBetween((lower - mean) / Math.sqrt(variance), (upper - mean) / Math.sqrt(variance)),
    },
    target,
  };
}

function everyChange(highs: Highs, instance: SwapInstance): number[] {
  return instance.fitted.map((_, place) => solveSwaps(highs, instance, place + 1));
}

/** Returns whether every optimum agreed. */
export async function benchNextSwaps(): Promise<boolean> {
  const highs = await loadHighs();
  const cold = swapInstance(1, 60);
  const ourFirst = timed(() => nextSwaps(questionOf(cold))).milliseconds;
  const theirFirst = timed(() => everyChange(highs, cold)).milliseconds;
  for (let seed = 2; seed <= 40; seed++) nextSwaps(questionOf(swapInstance(seed, 60)));
  for (let seed = 2; seed <= 4; seed++) everyChange(highs, swapInstance(seed, 60));
  console.log(
    `\nNext swaps: ${slots} steels in, every number of changes 0 to ${slots}, ${instances} seeded instances a row.`,
  );
  console.log(
    'Ours ranks by the chance of being in the band and names every plate; HiGHS gets counts per distinct height and',
  );
  console.log(
    'minimises |deviation|, once for every number of changes. Each sees an instance once; warmed up on other instances.',
  );
  console.log(`HiGHS gets the first ${alsoSolvedByHighs} instances of each row, and there the optima are compared.`);
  console.log(
    `Very first call in this process: ours ${milliseconds(ourFirst)} ms, HiGHS ${milliseconds(theirFirst)} ms.`,
  );
  let agrees = true;
  const rows: string[][] = [];
  for (const plates of [60, 200, 400, 2000]) {
    const seeds = Array.from({ length: instances }, (_, place) => plates * 100 + place);
    const drawn = seeds.map((seed) => swapInstance(seed, plates));
    const questions = drawn.map(questionOf);
    const mine = questions.map((question) => timed(() => nextSwaps(question)));
    const their = drawn.slice(0, alsoSolvedByHighs).map((instance) => timed(() => everyChange(highs, instance)));
    for (const [place, { value }] of mine.slice(0, alsoSolvedByHighs).entries()) {
      const options = value.ok ? value.value.options : [];
      const found = options.slice(1).map(({ absoluteDeviation }) => absoluteDeviation);
      const wrong = value.ok ? problemsInSwaps(questions[place]!, value.value) : [value.refusal.message];
      if (found.join() === their[place]!.value.join() && wrong.length === 0) continue;
      agrees = false;
      console.log(
        `  DIFFERENT at seed ${seeds[place]}: ours ${found}, HiGHS ${their[place]!.value} ${wrong.join(' ')}`,
      );
    }
    const ours = mine.map((run) => run.milliseconds);
    const theirs = their.map((run) => run.milliseconds);
    const ratios = theirs.map((time, place) => time / ours[place]!);
    rows.push([
      `${slots} of ${plates}`,
      milliseconds(median(ours)),
      milliseconds(Math.max(...ours)),
      milliseconds(median(theirs)),
      milliseconds(Math.max(...theirs)),
      `${Math.round(median(theirs) / median(ours))} ×`,
      `${Math.round(Math.min(...ratios))} ×`,
    ]);
  }
  printTable(['plates', 'ours ms', 'max', 'HiGHS ms', 'max', 'medians', 'worst'], rows);
  return agrees;
}
