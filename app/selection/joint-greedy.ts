// A good sharing found quickly: one pack after another takes the nearest it can get, rare heights last.
import { sumAlone } from './joint-bounds.ts';
import { costOf, type Goal, type JointProblem, type Shares } from './joint-request.ts';
import { firstSetsMaking, type Lot, reachableSums } from './reachable-sums.ts';

const partOfBin = 40;

/**
 * Lets the packs choose in this order, each from what is left, or null where one finds nothing within its limits.
 * With `spareRare` the most plentiful heights are used first, so that the rare ones are left for those who need them.
 */
export function takeTurns({ lots, goals }: JointProblem, order: readonly number[], spareRare: boolean): Shares | null {
  const left = lots.map(({ count }) => count);
  const shares = goals.map(() => lots.map(() => 0));
  for (const pack of order) {
    const choice = choose(lots, left, goals[pack]!, spareRare);
    if (choice === null) return null;
    for (const [lot, pieces] of choice) {
      left[lot]! -= pieces;
      shares[pack]![lot] = pieces;
    }
  }
  return shares;
}

function choose(
  lots: readonly Lot[],
  left: readonly number[],
  goal: Goal,
  spareRare: boolean,
): [number, number][] | null {
  const places = [...lots.keys()].filter((lot) => left[lot]! > 0);
  if (!spareRare) return chooseAmong(places, lots, left, goal);
  places.sort((a, b) => left[b]! - left[a]! || a - b);
  // A part of a rich bin usually does as well as all of it.
  const part = places.length > partOfBin ? chooseAmong(places.slice(0, partOfBin), lots, left, goal) : null;
  const sum = part?.reduce((total, [lot, pieces]) => total + pieces * lots[lot]!.height, 0);
  return sum !== undefined && costOf(goal, sum) === 0 ? part : chooseAmong(places, lots, left, goal);
}

function chooseAmong(
  places: number[],
  lots: readonly Lot[],
  left: readonly number[],
  goal: Goal,
): [number, number][] | null {
  const reachable = reachableSums(
    places.map((lot) => ({ ...lots[lot]!, count: left[lot]! })),
    [goal.plates],
    1,
  );
  const sum = reachable && sumAlone(reachable, goal);
  if (reachable === null || sum === null) return null;
  const [set] = firstSetsMaking(reachable, goal.plates, sum, 1);
  return set!.map(({ lot, pieces }) => [places[lot]!, pieces]);
}

/** Orders worth trying: as given, those that want the thickest first, the thinnest first, the most extreme first. */
export function turnOrders({ goals, lots }: JointProblem): number[][] {
  const given = [...goals.keys()];
  const wish = (pack: number) => goals[pack]!.aimLow / goals[pack]!.plates;
  const stock = lots.reduce((sum, { count }) => sum + count, 0);
  const mean = lots.reduce((sum, { height, count }) => sum + height * count, 0) / stock;
  return [
    given,
    given.toSorted((a, b) => Math.abs(wish(b) - mean) - Math.abs(wish(a) - mean)),
    given.toSorted((a, b) => wish(b) - wish(a)),
    given.toSorted((a, b) => wish(a) - wish(b)),
  ];
}
