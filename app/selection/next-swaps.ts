// What to swap next in one pack: for every number of changes the loose pieces with the best chance of being in the band.
import { accept, type Result, refuse } from '../base/result.ts';
import { type HeightToBuy, heightToBuy } from './height-to-buy.ts';
import { type AddedPiece, heightsOf, idsOf, layOut, type PackSearch, type Removal } from './pack-search.ts';
import { type Draw, firstSetsMaking, setsMaking, sumAtOrAbove, sumAtOrBelow, sumNearest } from './reachable-sums.ts';
import { type Band, checkQuestion, outsideBy, type SwapQuestion, sameClearance } from './swap-question.ts';

/**
 * Ids of the pieces that leave, thinnest first, and the pieces that come in (those read before, then the others, thinnest
 * first); a can's id may repeat.
 */
export type Swap = { readonly remove: readonly string[]; readonly add: readonly AddedPiece[] };

export type SwapOption = Swap & {
  readonly changes: number;
  readonly clearance: number;
  readonly variance: number;
  /** The chance of being in the band; null where there is no band. */
  readonly chance: number | null;
  readonly absoluteDeviation: number;
  /** A plan with fewer changes has the same chance or a better one, and is as near the target. */
  readonly isNoBetter: boolean;
  /** Equally good sets, this one first, up to the number asked for. */
  readonly equallyGood: readonly Swap[];
  /** No further set is equally good. */
  readonly isListComplete: boolean;
};

export type SwapAnswer =
  | { readonly status: 'Optimal'; readonly options: readonly SwapOption[] }
  | {
      /** No plan brings the expected clearance into the band. The options are still the best there are. */
      readonly status: 'Infeasible';
      readonly options: readonly SwapOption[];
      /** The limit that nothing reaches; `between`: pieces reach past both limits and none falls inside. */
      readonly blockedBy: 'lower limit' | 'upper limit' | 'between';
      readonly nearest: Swap & { readonly changes: number; readonly clearance: number; readonly outsideBy: number };
      readonly buy: HeightToBuy | null;
    };

/** Chances that differ by less are one chance: nobody can tell them apart, and the nearer to the target wins. */
const sameChance = 1e-12;

type Candidate = {
  readonly removal: Removal;
  readonly draw: Draw;
  readonly spaceLeft: number;
  readonly variance: number;
  /** The added sum with the best chance, and that chance. */
  readonly sum: number;
  readonly chance: number;
};

/**
 * For every number of changes from none to all: which fitted pieces to take out and which loose ones to put in. Every
 * removal is enumerated, with every return of a piece that was in the pack before, and every sum that can be added is
 * in the table: so the answer is exact and needs no budget.
 *
 * Ranked by the chance of being in the band; chances within 1e-12 are equal and the nearer to the target wins; without
 * a band, the nearest to the target. What is still equal is decided by: the looser clearance; the thinnest pieces
 * leave first; fewer pieces read before go back in; of the sets that come in, compared thickest piece first, the one
 * with the thinner piece. Groups and equal pieces go by name. The order in which things are listed never matters. A
 * number of changes for which there are not enough loose pieces is left out.
 *
 * Refuses: more than 12 fitted pieces, heights that are not whole and positive, a piece named twice, limits upside
 * down, heights too finely divided for the table of sums.
 *
 *     // 77.0 76.5 78.0 77.5 in a gap that leaves 341 thou for them; heights in tenths of a thou
 *     const fitted = [770, 765, 780, 775].map((height, place) => ({ id: `slot ${place + 1}`, height }));
 *     const answer = nextSwaps({
 *       groups: [{ name: 'steels', fitted, loose: [{ id: 'a', height: 830, count: 1, uncertaintyClass: 0 }] }],
 *       predict: (inPack) => ({
 *         spaceLeft: fitted.reduce((left, { height }, i) => left - ((inPack >> i) & 1) * height, 3410),
 *         variance: 64,
 *       }),
 *       band: { lower: 200, upper: 300, chance: (mean, variance) => normalChance(mean, variance, 200, 300) },
 *       target: 250,
 *     });
 *     // answer.value.options[1]: remove slot 2, add a, clearance 255
 */
export function nextSwaps(asked: SwapQuestion): Result<SwapAnswer> {
  const checked = checkQuestion(asked);
  if (!checked.ok) return checked;
  const question = checked.value;
  const search = layOut(question.groups);
  if (search === null) {
    return refuse('too-fine', 'These heights are too finely divided to be searched: round them to a coarser step.');
  }
  const candidates = listCandidates(search, question);
  const options: SwapOption[] = [];
  for (const [changes, ofThese] of Map.groupBy(candidates, ({ removal }) => removal.changes)) {
    options.push(bestOption(search, question, changes, ofThese, options));
  }
  const { band } = question;
  if (band === null || candidates.some(({ spaceLeft, sum }) => outsideBy(spaceLeft - sum, band) === 0)) {
    return accept({ status: 'Optimal', options });
  }
  const missed = nearestMiss(search, candidates, band);
  return accept({
    status: 'Infeasible',
    options,
    ...missed,
    buy: heightToBuy(search, question.predict, question.target, band),
  });
}

function listCandidates(search: PackSearch, { band, predict, target }: SwapQuestion): Candidate[] {
  const centre = bandCentre(band, target);
  const candidates: Candidate[] = [];
  for (const removal of search.removals) {
    for (const draw of search.drawsOf(removal.perGroup)) {
      const { spaceLeft, variance } = predict(removal.inPack, draw.perClass);
      const sum = sumNearest(search.reachable, draw.index, spaceLeft - centre);
      if (sum === null) continue;
      const chance = band ? band.chance(spaceLeft - sum, variance) : 0;
      candidates.push({ removal, draw, spaceLeft, variance, sum, chance });
    }
  }
  return candidates;
}

/** Where the chance is best: with one limit, as far from it as possible. */
function bandCentre(band: Band | null, target: number): number {
  if (band === null || (band.lower === null && band.upper === null)) return target;
  if (band.upper === null) return Number.POSITIVE_INFINITY;
  if (band.lower === null) return Number.NEGATIVE_INFINITY;
  return (band.lower + band.upper) / 2;
}

function bestOption(
  search: PackSearch,
  question: SwapQuestion,
  changes: number,
  candidates: readonly Candidate[],
  fewerChanges: readonly SwapOption[],
): SwapOption {
  const { band, target } = question;
  const enough = candidates.reduce((most, { chance }) => Math.max(most, chance), 0) - sameChance;
  const plans = candidates
    .filter(({ chance }) => chance >= enough)
    .flatMap((candidate) =>
      sumsNearestTarget(search, question, candidate, enough).map((sum) => {
        const clearance = candidate.spaceLeft - sum;
        return { ...candidate, sum, clearance, deviation: Math.abs(clearance - target) };
      }),
    );
  const deviation = plans.reduce((least, plan) => Math.min(least, plan.deviation), Number.POSITIVE_INFINITY);
  const isLooser = (plan: { clearance: number }) => plan.clearance > target + sameClearance;
  // The sort is stable: within one side of the target the removals keep their order.
  const equal = plans
    .filter((plan) => plan.deviation <= deviation + sameClearance)
    .toSorted((a, b) => Number(isLooser(b)) - Number(isLooser(a)));
  const { sets, isComplete } = nameSets(search, equal, Math.max(1, question.setsWanted ?? 1));
  const { clearance, variance, deviation: absoluteDeviation } = equal[0]!;
  const chance = band ? band.chance(clearance, variance) : null;
  const isNoBetter = fewerChanges.some(
    (option) =>
      (option.chance ?? 0) >= (chance ?? 0) - sameChance &&
      option.absoluteDeviation <= absoluteDeviation + sameClearance,
  );
  const [{ remove, add }] = sets as [Swap];
  return {
    changes,
    remove,
    add,
    clearance,
    variance,
    chance,
    absoluteDeviation,
    isNoBetter,
    equallyGood: sets,
    isListComplete: isComplete,
  };
}

/** Of the sums whose chance is good enough, those nearest to the target on either side. */
function sumsNearestTarget(
  { reachable }: PackSearch,
  { band, target }: SwapQuestion,
  { draw, spaceLeft, variance, sum }: Candidate,
  enough: number,
): number[] {
  const wanted = spaceLeft - target;
  const isGood = (added: number) => band === null || band.chance(spaceLeft - added, variance) >= enough;
  const around = [sumAtOrBelow(reachable, draw.index, wanted), sumAtOrAbove(reachable, draw.index, wanted)];
  const good = [...new Set(around)].filter((added) => added !== null && isGood(added)) as number[];
  if (good.length > 0) return good;
  // The target lies outside the stretch that is good enough: walk towards it as far as that stretch goes.
  for (let last = sum; ; ) {
    const next =
      last < wanted
        ? sumAtOrAbove(reachable, draw.index, last + reachable.step)
        : sumAtOrBelow(reachable, draw.index, last - reachable.step);
    if (next === null || !isGood(next)) return [last];
    last = next;
  }
}

/** Names the pieces of equally good plans, best first, each set of heights once, until there are as many as wanted. */
function nameSets(
  search: PackSearch,
  plans: readonly { removal: Removal; draw: Draw; sum: number }[],
  wanted: number,
): { sets: Swap[]; isComplete: boolean } {
  const sets: Swap[] = [];
  const seen = new Set<string>();
  for (const { removal, draw, sum } of plans) {
    for (const set of setsMaking(search.reachable, draw.index, sum)) {
      const heights = `${heightsOf(removal)} / ${set.map(({ lot, pieces }) => `${lot}x${pieces}`).join(' ')}`;
      if (seen.has(heights)) continue;
      seen.add(heights);
      if (sets.length === wanted) return { sets, isComplete: false };
      sets.push({ remove: idsOf(removal.removed), add: search.comingIn(removal, set) });
    }
  }
  return { sets, isComplete: true };
}

/** Which limit nothing reaches, and the plan that comes nearest to the band. */
function nearestMiss(search: PackSearch, candidates: readonly Candidate[], band: Band) {
  const tight: { plan: Candidate; outside: number }[] = [];
  const loose: typeof tight = [];
  for (const plan of candidates) {
    const { draw, spaceLeft } = plan;
    const thicker = sumAtOrAbove(search.reachable, draw.index, spaceLeft - (band.upper ?? Number.POSITIVE_INFINITY));
    const thinner = sumAtOrBelow(search.reachable, draw.index, spaceLeft - (band.lower ?? Number.NEGATIVE_INFINITY));
    for (const sum of [thinner, thicker]) {
      if (sum === null) continue;
      const clearance = spaceLeft - sum;
      const isTight = band.lower !== null && clearance < band.lower;
      (isTight ? tight : loose).push({ plan: { ...plan, sum }, outside: outsideBy(clearance, band) });
    }
  }
  const [first, ...others] = [...loose, ...tight];
  const nearest = others.reduce((best, miss) => (miss.outside < best.outside - sameClearance ? miss : best), first!);
  const { removal, draw, spaceLeft, sum } = nearest.plan;
  const [set] = firstSetsMaking(search.reachable, draw.index, sum, 1);
  const blockedBy: 'lower limit' | 'upper limit' | 'between' =
    tight.length > 0 && loose.length > 0 ? 'between' : tight.length > 0 ? 'lower limit' : 'upper limit';
  return {
    blockedBy,
    nearest: {
      changes: removal.changes,
      remove: idsOf(removal.removed),
      add: search.comingIn(removal, set!),
      clearance: spaceLeft - sum,
      outsideBy: nearest.outside,
    },
  };
}
