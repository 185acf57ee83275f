// What comebacks cost: counted once by quarter and family, told again under each of their causes, and summed as asked.
import { quarterOf, quartersBetween } from '../jobs/calendar-days.ts';
import { type Cause, type Covering, causes, type Outcome } from './causes.ts';
import type { CostCell, CostOfCause } from './cost.contract.ts';

/** One comeback; those logged by mistake are left out before. */
export type CostlyComeback = {
  readonly familyId: number;
  readonly cameBackOn: string;
  readonly outcome: Outcome;
  readonly covered: Covering;
  readonly cost_cents: number | null;
  /** Known or suspected, each once. */
  readonly causes: readonly Cause[];
};

export type Delivered = { readonly familyId: number; readonly quarter: string; readonly count: number };

type Sums = Omit<CostCell, 'quarter' | 'familyId'>;

const nothingYet: Sums = { delivered: 0, cameBack: 0, ours: 0, cost_cents: 0, unpriced: 0, undecided: 0 };

/** A cell for each quarter and family that delivered something or had something come back. */
export function costCells(comebacks: readonly CostlyComeback[], delivered: readonly Delivered[]): CostCell[] {
  const cells = new Map<string, CostCell>();
  const add = (quarter: string, familyId: number, more: Partial<Sums>) => {
    const key = `${quarter} ${familyId}`;
    cells.set(key, { quarter, familyId, ...plus(cells.get(key) ?? nothingYet, more) });
  };
  for (const { quarter, familyId, count } of delivered) add(quarter, familyId, { delivered: count });
  for (const comeback of comebacks) add(quarterOf(comeback.cameBackOn), comeback.familyId, sumsOf(comeback));
  return [...cells.values()].toSorted(
    (one, other) => one.quarter.localeCompare(other.quarter) || one.familyId - other.familyId,
  );
}

function sumsOf({ outcome, covered, cost_cents }: CostlyComeback): Partial<Sums> {
  const isOnShop = covered === 'in warranty' || covered === 'out of goodwill';
  return {
    cameBack: 1,
    ours: outcome === 'ours' ? 1 : 0,
    cost_cents: isOnShop ? (cost_cents ?? 0) : 0,
    unpriced: isOnShop && cost_cents === null ? 1 : 0,
    undecided: covered === 'not decided yet' ? 1 : 0,
  };
}

/** The whole of each comeback under each of its causes. */
export function costOfCauses(comebacks: readonly CostlyComeback[]): CostOfCause[] {
  const told = new Map<string, CostOfCause>();
  for (const comeback of comebacks) {
    const { familyId } = comeback;
    const quarter = quarterOf(comeback.cameBackOn);
    for (const cause of comeback.causes.length === 0 ? [null] : comeback.causes) {
      const key = `${quarter} ${familyId} ${cause}`;
      const before = told.get(key);
      told.set(key, {
        quarter,
        familyId,
        cause,
        cameBack: (before?.cameBack ?? 0) + 1,
        cost_cents: (before?.cost_cents ?? 0) + (sumsOf(comeback).cost_cents ?? 0),
      });
    }
  }
  return [...told.values()];
}

export type Asked = { readonly familyId: number | null; readonly quarter: string | null };

/** What the cells asked for come to. */
export function sumCells(cells: readonly CostCell[], asked: Asked): Sums {
  return cells.filter((cell) => isAsked(cell, asked)).reduce<Sums>(plus, nothingYet);
}

/** Every quarter from the first to the last, with what it comes to; a quarter in which nothing happened is a zero. */
export function sumByQuarter(cells: readonly CostCell[], familyId: number | null): Array<Sums & { quarter: string }> {
  const quarters = cells.filter((cell) => isAsked(cell, { familyId, quarter: null })).map(({ quarter }) => quarter);
  const [first, last] = [quarters.toSorted()[0], quarters.toSorted().at(-1)];
  if (first === undefined || last === undefined) return [];
  return quartersBetween(first, last).map((quarter) => ({ quarter, ...sumCells(cells, { familyId, quarter }) }));
}

/** Each cause with what is told of it, the costliest first, those without a cause last. */
export function sumByCause(
  told: readonly CostOfCause[],
  asked: Asked,
): Array<Omit<CostOfCause, 'quarter' | 'familyId'>> {
  const within = told.filter((each) => isAsked(each, asked));
  const sums = [...causes, null].map((cause) => {
    const of = within.filter((each) => each.cause === cause);
    return {
      cause,
      cameBack: of.reduce((sum, each) => sum + each.cameBack, 0),
      cost_cents: of.reduce((sum, each) => sum + each.cost_cents, 0),
    };
  });
  return sums
    .filter(({ cameBack }) => cameBack > 0)
    .toSorted(
      (one, other) =>
        Number(one.cause === null) - Number(other.cause === null) ||
        other.cost_cents - one.cost_cents ||
        other.cameBack - one.cameBack,
    );
}

function isAsked(each: { readonly familyId: number; readonly quarter: string }, { familyId, quarter }: Asked): boolean {
  return (familyId === null || each.familyId === familyId) && (quarter === null || each.quarter === quarter);
}

function plus(one: Sums, other: Partial<Sums>): Sums {
  return {
    delivered: one.delivered + (other.delivered ?? 0),
    cameBack: one.cameBack + (other.cameBack ?? 0),
    ours: one.ours + (other.ours ?? 0),
    cost_cents: one.cost_cents + (other.cost_cents ?? 0),
    unpriced: one.unpriced + (other.unpriced ?? 0),
    undecided: one.undecided + (other.undecided ?? 0),
  };
}
