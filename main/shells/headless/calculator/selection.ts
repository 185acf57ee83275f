// The calculator's computations of selection: plates from stock, and what to swap next.
import { z } from 'zod';
import { assert } from '../../../../app/base/assert.ts';
import { type Result, refuse } from '../../../../app/base/result.ts';
import { decimalsOf, roundToDecimals } from '../../../../app/quantities/decimals.ts';
import type { HeightToBuy } from '../../../../app/selection/height-to-buy.ts';
import { nextSwaps } from '../../../../app/selection/next-swaps.ts';
import { selectPlates } from '../../../../app/selection/select-plates.ts';
import { selectPlatesJointly } from '../../../../app/selection/select-plates-jointly.ts';
import type { SwapQuestion } from '../../../../app/selection/swap-question.ts';
import { problemsInJointSelection, problemsInSelection, problemsInSwaps } from '../../../../app/selection/verify.ts';
import { probabilityInside } from '../../../../app/statistics/conformity.ts';
import { computation, mapResult, number, positive } from './computation.ts';

const whole = (what: string) => z.int().describe(what);
const wholes = (what: string) => z.array(z.int()).describe(what);

/** More optimal sets than this are not listed. */
const mostSets = 1000;
/** Beyond it fractions of a step would no longer be exact enough. */
const mostSteps = 1e9;

/** An answer only where a second reckoning, from the question alone, agrees with it. */
function addedUpAgain<T>(result: Result<T>, problemsIn: (answer: T) => readonly string[]): Result<T> {
  if (result.ok) assert(problemsIn(result.value).length === 0, 'an answer of the search adds up');
  return result;
}

const plates = computation({
  name: 'select-plates',
  purpose: 'the plates of one pack from counts per thickness, nearest to the target',
  input: z.strictObject({
    space: whole('what is there for plates and clearance together; whole numbers of one unit throughout'),
    plates: whole('exactly so many'),
    thicknesses: wholes('that there are'),
    stock: wholes('how many of each'),
    target: whole('clearance aimed at'),
    lower: whole('least clearance'),
    upper: whole('most clearance'),
  }),
  outputs: {
    status: '"Optimal" or "Infeasible"',
    clearance: 'of the plates chosen',
    counts: 'plates of each thickness, in the order given',
    absoluteDeviation: 'of the clearance from the target',
    optimalSets: `counts of every set as near, the chosen one first, at most ${mostSets}`,
    isListComplete: 'whether these are all',
    blockedBy:
      'where infeasible: "stock", "lower limit", "upper limit", or "between" where plates only fall outside both',
    nearest: 'where infeasible: the clearance nearest to the limits and its counts, or null',
    buy: 'where infeasible: the fewest plates of one thickness that bring it in, as {thickness, pieces, isListed, counts, clearance}, counts from stock beside them; isListed is false where none of the thicknesses given helps but one between them does; null where none does',
  },
  formula: [
    'clearance = space − Σ thicknesses; exact, by the table of all sums.',
    'Equally near: the looser clearance; then, thickest plate first, the set with the thinner plate.',
    'To buy: fewest pieces; then nearest to the target; then nearest to the middle of the thicknesses given; then the',
    'thinner; then the looser clearance. A thickness with none in stock counts as one that could be bought.',
  ].join('\n'),
  source: 'enumeration of reachable sums',
  compute: (input) => {
    const request = { ...input, setsWanted: mostSets };
    return addedUpAgain(selectPlates(request), (found) => problemsInSelection(request, found));
  },
});

const jointly = computation({
  name: 'select-plates-jointly',
  purpose: 'the plates of several packs that share one stock',
  input: z.strictObject({
    thicknesses: wholes('that there are; whole numbers of one unit throughout'),
    stock: wholes('how many of each, for all packs together'),
    packs: z.array(
      z.strictObject({
        job: z.string().optional().describe('whose pack it is; the bin does not care, it comes back with the answer'),
        space: whole('what is there for plates and clearance together'),
        plates: whole('exactly so many'),
        target: whole('clearance aimed at'),
        lower: whole('least clearance'),
        upper: whole('most clearance'),
      }),
    ),
    objective: z
      .enum(['sum', 'largest'])
      .describe('smallest sum of |clearance − target|, or first the largest of them'),
    nodes: z.int().min(0).optional().describe('how many steps the search may take, 200000 if left out'),
  }),
  outputs: {
    status: '"Optimal", "Infeasible", or "BudgetExhausted" where the search stopped before it could prove its best',
    packs:
      'job if it was given, clearance, and counts of each thickness, one a pack, in the order given; null where nothing is known to fit',
    sum: 'of |clearance − target| over the packs',
    largest: 'of them',
    provedBy: 'where optimal: what shows that nothing is better',
    blockedBy:
      'where infeasible: the first pack that cannot be brought in alone, counted from 0, or "jointly", or "stock"',
    nearest: 'where infeasible: the sharing that lies outside the limits by the least, or null',
    buy: 'where infeasible: the fewest plates of one of the thicknesses given, some of them or none in stock, with which all packs fit, as {thickness, pieces, isProvenFewest, packs, sum, largest}; each pack with the number of bought plates in it; null where none is known',
    best: 'where the search stopped: the best known, as packs, sum and largest (which also stand by themselves), or null',
    bound: 'where the search stopped: proven, it cannot be below this; boundOn says what, nodes the steps taken',
  },
  formula: [
    'clearance = space − Σ thicknesses; exact. The search is counted in steps, not in time, and draws nothing.',
    'The packs may be of one unit or of several jobs: the bin does not care whose unit a pack is in.',
    'To buy: fewest pieces; then what the objective prefers; then nearest to the middle of the thicknesses; then thinner.',
  ].join('\n'),
  source: 'bounds, exchange and branching over reachable sums',
  compute: ({ nodes, ...asked }) => {
    const request = { ...asked, ...(nodes === undefined ? {} : { nodeBudget: nodes }) };
    const withJobs = <P extends object>(plan: { readonly packs: readonly P[] }) => ({
      ...plan,
      packs: plan.packs.map((pack, place) => {
        const { job } = asked.packs[place]!;
        return job === undefined ? pack : { job, ...pack };
      }),
    });
    const found = addedUpAgain(selectPlatesJointly(request), (answer) => problemsInJointSelection(request, answer));
    return mapResult(found, (answer): object => {
      if (answer.status === 'Optimal') return withJobs(answer);
      if (answer.status === 'Infeasible') {
        const { nearest, buy } = answer;
        return { ...answer, nearest: nearest && withJobs(nearest), buy: buy && withJobs(buy) };
      }
      const best = answer.best && withJobs(answer.best);
      return { packs: null, sum: null, largest: null, ...best, ...answer, best };
    });
  },
});

const piece = z.strictObject({ id: z.string(), thickness: positive('in one unit throughout') });
const fittedPieces = z.array(piece);
const loosePieces = z.array(
  piece.extend({ count: z.int().min(1).optional().describe('how many such, 1 if left out') }),
);
const judged = {
  space: number('what is there for all of these plates and clearance together'),
  target: number('clearance aimed at'),
  lower: number('least clearance'),
  upper: number('most clearance'),
  standardUncertainty: positive('of a predicted clearance, the same for every plan'),
};

const swaps = computation({
  name: 'next-swaps',
  purpose: 'for every number of changes, the plates at hand with the best chance of being in the band',
  input: z.union([
    z.strictObject({
      current: fittedPieces.describe('the plates that are in'),
      bin: loosePieces.describe('the loose plates, one by one'),
      ...judged,
    }),
    z.strictObject({
      groups: z
        .array(
          z.strictObject({
            name: z.string().describe('of slots whose plates can replace each other, such as steels, or snap ring'),
            current: fittedPieces.describe('what is in'),
            bin: loosePieces.describe('what is loose'),
            forSale: z
              .array(positive('a thickness that could be bought'))
              .optional()
              .describe('any between the thinnest and the thickest known if left out'),
          }),
        )
        .describe('several kinds of adjuster in one pack'),
      ...judged,
    }),
  ]),
  outputs: {
    status: '"Optimal", or "Infeasible" where no plan is expected inside the band',
    options:
      'for each number of changes: changes, remove and add as ids, clearance, probabilityInBand, isNoBetter where fewer changes do as well, equallyGood how many sets there are, at most 1000',
    blockedBy: 'where infeasible: "lower limit", "upper limit" or "between"',
    nearest: 'where infeasible: the plan nearest to the band, as changes, remove, add, clearance, outsideBy',
    buy: 'where infeasible: the fewest pieces of one thickness that bring it in, as {group, thickness, pieces, changes, remove, add, clearance}: the ids that leave, the loose ones that come in beside those bought, and the clearance then; or null',
  },
  formula: [
    'clearance = space − Σ thicknesses; P = Φ((upper − clearance)/u) − Φ((lower − clearance)/u); exact.',
    'Best chance; chances within 1e-12 are equal and the nearer to the target wins; then the looser clearance;',
    'then the thinnest plates leave first, and of those that come in the set with the thinner thickest plate.',
    'To buy: fewest pieces; then fewest changes; then nearest to the target; then nearest to the middle of the',
    'thicknesses for sale; then the thinner; then the looser clearance. Plates replace plates of their own group only.',
    'Where nothing is said to be for sale, a thickness to buy has as many decimals as the finest length given.',
  ].join('\n'),
  source: 'enumeration of removals and of reachable sums',
  compute: ({ space, target, lower, upper, standardUncertainty, ...pack }) => {
    const groups = 'groups' in pack ? pack.groups : [{ name: 'plates', ...pack }];
    if (target < lower || target > upper) {
      return lower > upper
        ? refuse('limits-upside-down', 'The lower limit is above the upper limit.')
        : refuse('target-outside', 'The target lies outside its limits.');
    }
    const thicknesses = groups.flatMap(({ current, bin, forSale = [] }) => [
      ...[...current, ...bin].map(({ thickness }) => thickness),
      ...forSale,
    ]);
    const coarsest = mostDecimals(thicknesses);
    if (coarsest > 9) return refuse('too-fine', 'A thickness has more than nine decimals.');
    const lengths = [space, target, lower, upper, ...thicknesses];
    const largest = Math.max(...lengths.map(Math.abs));
    if (largest * 10 ** coarsest > mostSteps) {
      return refuse('out-of-range', `A length is more than ${mostSteps} times the finest step of the thicknesses.`);
    }
    // As fine as the limits ask for, so that what is bought can meet them, as long as every length stays countable.
    let decimals = mostDecimals(lengths);
    while (decimals > coarsest && largest * 10 ** decimals > mostSteps) decimals--;
    const steps = 10 ** decimals;
    const inSteps = (thickness: number) => Math.round(thickness * steps);
    const inUnit = (length: number) => roundToDecimals(length / steps, mostDecimals(lengths));
    const fitted = groups.flatMap(({ current }) => current.map(({ thickness }) => inSteps(thickness)));
    const question: SwapQuestion = {
      groups: groups.map(({ name, current, bin, forSale }) => ({
        name,
        fitted: current.map(({ id, thickness }) => ({ id, height: inSteps(thickness) })),
        loose: bin.map(({ id, thickness, count = 1 }) => ({
          id,
          height: inSteps(thickness),
          count,
          uncertaintyClass: 0,
        })),
        ...(forSale ? { forSale: forSale.map(inSteps) } : {}),
      })),
      predict: (inPack) => ({
        spaceLeft: fitted.reduce((left, height, i) => ((inPack >> i) & 1 ? left - height : left), space * steps),
        variance: (standardUncertainty * steps) ** 2,
      }),
      band: {
        lower: lower * steps,
        upper: upper * steps,
        // In the unit they were typed in, so that a narrow band keeps its width.
        chance: (clearance) => probabilityInside(clearance / steps, standardUncertainty, { lower, upper }),
      },
      target: target * steps,
      setsWanted: mostSets,
    };
    const found = addedUpAgain(nextSwaps(question), (answer) => problemsInSwaps(question, answer));
    return mapResult(found, ({ status, options, ...missed }) => ({
      status,
      options: options.map(({ chance, equallyGood, isNoBetter, ...plan }) => ({
        ...planInUnit(plan, inUnit),
        probabilityInBand: chance,
        isNoBetter,
        equallyGood: equallyGood.length,
      })),
      ...('buy' in missed
        ? {
            blockedBy: missed.blockedBy,
            nearest: { ...planInUnit(missed.nearest, inUnit), outsideBy: inUnit(missed.nearest.outsideBy) },
            buy: missed.buy && {
              group: missed.buy.group,
              thickness: inUnit(missed.buy.height),
              pieces: missed.buy.pieces,
              ...planInUnit(missed.buy, inUnit),
            },
          }
        : {}),
    }));
  },
});

function mostDecimals(lengths: readonly number[]): number {
  return lengths.reduce((most, length) => Math.max(most, decimalsOf(length)), 0);
}

type Plan = Pick<HeightToBuy, 'changes' | 'remove' | 'add' | 'clearance'>;

function planInUnit({ changes, remove, add, clearance }: Plan, inUnit: (length: number) => number) {
  return { changes, remove, add: add.map(({ id }) => id), clearance: inUnit(clearance) };
}

export const selectionComputations = [plates, jointly, swaps];
