// The calculator's computations of selection: plates from stock, and what to swap next.
import { z } from 'zod';
import { refuse } from '../../../../app/base/result.ts';
import { decimalsOf, roundToDecimals } from '../../../../app/quantities/decimals.ts';
import { nextSwaps } from '../../../../app/selection/next-swaps.ts';
import { selectPlates } from '../../../../app/selection/select-plates.ts';
import { selectPlatesJointly } from '../../../../app/selection/select-plates-jointly.ts';
import { probabilityInside } from '../../../../app/statistics/conformity.ts';
import { computation, mapResult, number, positive } from './computation.ts';

const whole = (what: string) => z.int().describe(what);
const wholes = (what: string) => z.array(z.int()).describe(what);

/** More optimal sets than this are not listed. */
const mostSets = 1000;

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
    buy: 'where infeasible: height and pieces of the one thickness that would bring it in, or null',
  },
  formula:
    'clearance = space − Σ thicknesses; exact, by the table of all sums.\nEqually near: the looser clearance; then, thickest plate first, the set with the thinner plate.',
  source: 'enumeration of reachable sums',
  compute: (input) => selectPlates({ ...input, setsWanted: mostSets }),
});

const jointly = computation({
  name: 'select-plates-jointly',
  purpose: 'the plates of several packs that share one stock',
  input: z.strictObject({
    thicknesses: wholes('that there are; whole numbers of one unit throughout'),
    stock: wholes('how many of each, for all packs together'),
    packs: z.array(
      z.strictObject({
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
  }),
  outputs: {
    status: '"Optimal", "Infeasible", or "BudgetExhausted" where the search stopped before it could prove its best',
    packs: 'clearance and counts of each thickness, one a pack, in the order given; null where nothing is known to fit',
    sum: 'of |clearance − target| over the packs',
    largest: 'of them',
    provedBy: 'where optimal: what shows that nothing is better',
    blockedBy:
      'where infeasible: the first pack that cannot be brought in alone, counted from 0, or "jointly", or "stock"',
    nearest: 'where infeasible: the sharing that lies outside the limits by the least, or null',
    bound: 'where the search stopped: proven, it cannot be below this; boundOn says what',
  },
  formula: 'clearance = space − Σ thicknesses; exact. The search is counted in steps, not in time, and draws nothing.',
  source: 'bounds, exchange and branching over reachable sums',
  compute: (input) =>
    mapResult(selectPlatesJointly(input), (found) => {
      if (found.status !== 'BudgetExhausted') return found;
      const { best, ...stopped } = found;
      return { ...stopped, packs: best?.packs ?? null, sum: best?.sum ?? null, largest: best?.largest ?? null };
    }),
});

const piece = z.strictObject({ id: z.string(), thickness: positive('in one unit throughout') });

const swaps = computation({
  name: 'next-swaps',
  purpose: 'for every number of changes, the plates at hand with the best chance of being in the band',
  input: z.strictObject({
    current: z.array(piece).describe('the plates that are in'),
    bin: z.array(piece).describe('the loose plates, one by one'),
    space: number('what is there for these plates and clearance together'),
    target: number('clearance aimed at'),
    lower: number('least clearance'),
    upper: number('most clearance'),
    standardUncertainty: positive('of a predicted clearance, the same for every plan'),
  }),
  outputs: {
    status: '"Optimal", or "Infeasible" where no plan is expected inside the band',
    options:
      'for each number of changes: changes, remove and add as ids, clearance, probabilityInBand, isNoBetter where fewer changes do as well, equallyGood how many sets there are, at most 1000',
    blockedBy: 'where infeasible: "lower limit", "upper limit" or "between"',
    buy: 'where infeasible: height and pieces of the one thickness that would bring it in, or null',
  },
  formula: [
    'clearance = space − Σ thicknesses; P = Φ((upper − clearance)/u) − Φ((lower − clearance)/u); exact.',
    'Best chance; chances within 1e-12 are equal and the nearer to the target wins; then the looser clearance;',
    'then the thinnest plates leave first, and of those that come in the set with the thinner thickest plate.',
  ].join('\n'),
  source: 'enumeration of removals and of reachable sums',
  compute: ({ current, bin, space, target, lower, upper, standardUncertainty }) => {
    const decimals = Math.max(0, ...[...current, ...bin].map((each) => decimalsOf(each.thickness)));
    if (decimals > 9) return refuse('too-fine', 'A thickness has more than nine decimals.');
    const steps = 10 ** decimals;
    const heightOf = (each: z.output<typeof piece>) => ({ id: each.id, height: Math.round(each.thickness * steps) });
    const fitted = current.map(heightOf);
    const found = nextSwaps({
      groups: [
        {
          name: 'plates',
          fitted,
          loose: bin.map((each) => ({ ...heightOf(each), count: 1, uncertaintyClass: 0 })),
        },
      ],
      predict: (inPack) => ({
        spaceLeft: fitted.reduce((left, { height }, i) => ((inPack >> i) & 1 ? left - height : left), space * steps),
        variance: (standardUncertainty * steps) ** 2,
      }),
      band: {
        lower: lower * steps,
        upper: upper * steps,
        chance: (clearance, variance) =>
          probabilityInside(clearance, Math.sqrt(variance), { lower: lower * steps, upper: upper * steps }),
      },
      target: target * steps,
      setsWanted: mostSets,
    });
    const inUnit = (inSteps: number) => roundToDecimals(inSteps / steps, Math.max(decimals, decimalsOf(space)));
    return mapResult(found, (answer) => ({
      status: answer.status,
      options: answer.options.map((option) => ({
        changes: option.changes,
        remove: option.remove,
        add: option.add.map((each) => each.id),
        clearance: inUnit(option.clearance),
        probabilityInBand: option.chance,
        isNoBetter: option.isNoBetter,
        equallyGood: option.equallyGood.length,
      })),
      ...(answer.status === 'Infeasible'
        ? {
            blockedBy: answer.blockedBy,
            buy: answer.buy && { height: inUnit(answer.buy.height), pieces: answer.buy.pieces },
          }
        : {}),
    }));
  },
});

export const selectionComputations = [plates, jointly, swaps];
