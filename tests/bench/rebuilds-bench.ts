// Rebuilds to the band: our plan against one-swap arithmetic with a micrometer, with and without a guarded stop.
import { clearanceWithLoose, learnGap, predictClearance, spaceLeftBy } from '../../app/packs/gap.ts';
import { nextSwaps } from '../../app/selection/next-swaps.ts';
import { normalBetween } from '../../app/statistics/normal.ts';
import { median, printTable, quantile } from './measure.ts';
import { type Draw, seeded } from './seeded.ts';
import {
  type Plate,
  readingUncertainty,
  type Setting,
  type SimulatedPack,
  simulatedPack,
  truth,
} from './simulated-pack.ts';

const packs = 2000;
const mostRebuilds = 8;
const sureEnough = 0.95;

type Estimate = { readonly mean: number; readonly standardDeviation: number };
type Build = { readonly plates: readonly Plate[]; readonly reading: number };
type Arm = {
  readonly name: string;
  /** What is believed of the pack as it stands. */
  readonly judge: (builds: readonly Build[]) => Estimate;
  readonly isIn: (believed: Estimate, lower: number, upper: number) => boolean;
  /** The next plates to build, or null where nothing at hand is thought to help. */
  readonly next: (pack: SimulatedPack, builds: readonly Build[], setting: Setting) => readonly Plate[] | null;
};

const plain = ({ mean }: Estimate, lower: number, upper: number) => mean >= lower && mean <= upper;
const guarded = (believed: Estimate, lower: number, upper: number) => chance(believed, lower, upper) >= sureEnough;
const reads = (builds: readonly Build[]): Estimate => ({
  mean: builds.at(-1)!.reading,
  standardDeviation: readingUncertainty,
});

const arms: readonly Arm[] = [
  { name: 'plan, guarded stop', judge: afterAll, isIn: guarded, next: planned },
  { name: 'plan, plain stop', judge: reads, isIn: plain, next: planned },
  { name: 'one swap, guarded stop', judge: reads, isIn: guarded, next: oneSwap },
  { name: 'one swap, plain stop', judge: reads, isIn: plain, next: oneSwap },
];

/** Prints what comes out; there is nothing to agree with. */
export async function benchRebuilds(): Promise<boolean> {
  console.log(
    `\nRebuilds to the band: a simulated bench with known truth, ${packs} seeded packs a row, the same ones for every arm.`,
  );
  console.log(
    `Six plates off by 0.3 thou each and 0.2 together, hand 0.7 thou at four spots, dial read to half a thou, drum uneven by up to ${truth.mostUneven / 10},\nre-stacked to 1 thou; plates of 74 to 83 thou, found off by 8 (one standard deviation each).`,
  );
  console.log(
    `Guarded stop: called in at a chance of 95 %. One swap: the pair nearest by micrometer. Given up after ${mostRebuilds} rebuilds.`,
  );
  const rows: string[][] = [];
  for (const halfBand of [25, 50]) {
    for (const loose of [60, 12]) {
      for (const arm of arms) rows.push(rowOf(arm, { halfBand, loose }));
    }
  }
  printTable(['band, loose plates', 'arm', 'mean', 'median', '90 %', 'off, median', 'wrongly in', 'given up'], rows);
  return true;
}

function rowOf(arm: Arm, setting: Setting): string[] {
  const results = Array.from({ length: packs }, (_, seed) => rebuild(arm, setting, seeded(seed + 1)));
  const finished = results.filter(({ isCalledIn }) => isCalledIn);
  const rebuilds = finished.map((result) => result.rebuilds);
  const wrong = finished.filter(({ off }) => off > setting.halfBand).length;
  const share = (count: number, of: number) => `${((100 * count) / of).toFixed(1)} %`;
  return [
    `± ${setting.halfBand / 10}, ${setting.loose}`,
    arm.name,
    (rebuilds.reduce((sum, each) => sum + each, 0) / rebuilds.length).toFixed(2),
    `${median(rebuilds)}`,
    `${quantile(rebuilds, 0.9)}`,
    (median(finished.map(({ off }) => off)) / 10).toFixed(1),
    share(wrong, finished.length),
    share(packs - finished.length, packs),
  ];
}

function rebuild(arm: Arm, setting: Setting, draw: Draw) {
  const pack = simulatedPack(draw, setting);
  const lower = truth.target - setting.halfBand;
  const upper = truth.target + setting.halfBand;
  const builds: Build[] = [];
  let plates: readonly Plate[] | null = pack.fitted;
  for (let rebuilds = 0; plates !== null && rebuilds <= mostRebuilds; rebuilds++) {
    const { clearance, reading } = pack.build(plates);
    builds.push({ plates, reading });
    const off = Math.abs(clearance - truth.target);
    if (arm.isIn(arm.judge(builds), lower, upper)) return { isCalledIn: true, rebuilds, off };
    plates = arm.next(pack, builds, setting);
  }
  return { isCalledIn: false, rebuilds: builds.length - 1, off: Number.POSITIVE_INFINITY };
}

/** Swaps the one pair that by micrometer brings the last reading nearest to the target. */
function oneSwap({ fitted, loose }: SimulatedPack, builds: readonly Build[]): readonly Plate[] | null {
  const { plates, reading } = builds.at(-1)!;
  let best: { off: number; plates: readonly Plate[] } | null = null;
  for (const [place, out] of plates.entries()) {
    for (const into of [...fitted, ...loose]) {
      if (plates.includes(into)) continue;
      const off = Math.abs(reading - truth.target + out.miked - into.miked);
      if (best === null || off < best.off) best = { off, plates: plates.with(place, into) };
    }
  }
  return best?.plates ?? null;
}

/** The best plan with the fewest changes that is sure enough, or the surest there is. */
function planned(
  { fitted, loose }: SimulatedPack,
  builds: readonly Build[],
  setting: Setting,
): readonly Plate[] | null {
  const all = [...fitted, ...loose];
  const plates = builds.at(-1)!.plates;
  const knowledge = knowledgeOf(builds);
  const readBefore = all.filter(
    (plate) => !plates.includes(plate) && builds.some((build) => build.plates.includes(plate)),
  );
  const fresh = all.filter((plate) => !plates.includes(plate) && !readBefore.includes(plate));
  const named = [...plates, ...readBefore];
  const height = ({ id, miked }: Plate) => ({ id, height: miked });
  const lower = truth.target - setting.halfBand;
  const upper = truth.target + setting.halfBand;
  const answer = nextSwaps({
    groups: [
      {
        name: 'steels',
        fitted: plates.map(height),
        readBefore: readBefore.map(height),
        loose: fresh.map((plate) => ({ ...height(plate), count: 1, uncertaintyClass: 0 })),
      },
    ],
    predict: (inPack, [count = 0]) => {
      const space = must(
        spaceLeftBy(
          knowledge,
          named.filter((_, place) => (inPack >> place) & 1).map(({ id }) => id),
        ),
      );
      const variances = count * truth.micrometerPerPlate ** 2;
      const { mean, standardDeviation } = clearanceWithLoose(space, { count, heights: 0, variances });
      return { spaceLeft: mean, variance: standardDeviation ** 2 };
    },
    band: {
      lower,
      upper,
      chance: (mean, variance) => chance({ mean, standardDeviation: Math.sqrt(variance) }, lower, upper),
    },
    target: truth.target,
  });
  const options = must(answer).options.slice(1);
  const surest = options.reduce((best, option) => (option.chance! > best.chance! ? option : best));
  const plan = options.find((option) => option.chance! >= sureEnough) ?? surest;
  const incoming = plan.add.map(({ id }) => all.find((plate) => plate.id === id)!);
  return [...plates.filter(({ id }) => !plan.remove.includes(id)), ...incoming];
}

/** What the last build is, from its reading and from what the earlier builds led to expect. */
function afterAll(builds: readonly Build[]): Estimate {
  const reading = reads(builds);
  if (builds.length === 1) return reading;
  const { plates } = builds.at(-1)!;
  const knowledge = knowledgeOf(builds.slice(0, -1), plates);
  const expected = must(
    predictClearance(
      knowledge,
      plates.map(({ id }) => id),
    ),
  );
  const weights = [reading, expected].map(({ standardDeviation }) => 1 / standardDeviation ** 2) as [number, number];
  const total = weights[0] + weights[1];
  return {
    mean: (weights[0] * reading.mean + weights[1] * expected.mean) / total,
    standardDeviation: 1 / Math.sqrt(total),
  };
}

function knowledgeOf(builds: readonly Build[], also: readonly Plate[] = []) {
  const plates = [...new Set([...builds.flatMap((build) => build.plates), ...also])];
  return must(
    learnGap({
      gapPrior: null,
      pieces: plates.map(({ id, miked }) => ({ id, height: miked, standardUncertainty: truth.micrometerPerPlate })),
      sharedMicrometerUncertainty: truth.micrometerShared,
      restack: truth.restack,
      mockUps: builds.map((build) => ({
        pieces: build.plates.map(({ id }) => id),
        clearance: build.reading,
        standardUncertainty: readingUncertainty,
      })),
    }),
  );
}

function chance({ mean, standardDeviation }: Estimate, lower: number, upper: number): number {
  return normalBetween((lower - mean) / standardDeviation, (upper - mean) / standardDeviation);
}

function must<T>(result: { ok: true; value: T } | { ok: false; refusal: { message: string } }): T {
  if (!result.ok) throw new Error(result.refusal.message);
  return result.value;
}
