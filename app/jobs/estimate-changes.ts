// What changed between two states of a ticket, line by line, so that a customer can be told before paying.
import { lineAmount_cents, type PricedLine, totalsOf } from './estimate-total.ts';

export type ComparedLine = PricedLine & { readonly lineId: number; readonly description: string };

export type Priced = { readonly lines: readonly ComparedLine[]; readonly taxPerHundredThousand: number };

export type Changes = {
  lines: Array<{
    description: string;
    was_cents: number | null;
    is_cents: number | null;
    difference_cents: number;
  }>;
  tax_difference_cents: number;
  total_difference_cents: number;
};

/**
 * Every line that is not the same in both, a replaced one beside what replaced it, and what that does to tax and total;
 * the differences always add up to the difference of the totals. `replacedBy` leads from a line to its successor.
 */
export function changesBetween(before: Priced, now: Priced, replacedBy: ReadonlyMap<number, number>): Changes {
  const standing = new Map(now.lines.map((line) => [line.lineId, line]));
  const kept = new Set<number>();
  const changed = before.lines.flatMap((was): Changes['lines'] => {
    const is = standing.get(newestOf(was.lineId, replacedBy));
    if (is) kept.add(is.lineId);
    if (is?.lineId === was.lineId) return [];
    return [changeOf(was, is)];
  });
  const added = now.lines.filter((line) => !kept.has(line.lineId)).map((line) => changeOf(undefined, line));
  const [then, today] = [before, now].map((priced) => totalsOf(priced.lines, priced.taxPerHundredThousand));
  return {
    lines: [...changed, ...added],
    tax_difference_cents: (today?.tax_cents ?? 0) - (then?.tax_cents ?? 0),
    total_difference_cents: (today?.total_cents ?? 0) - (then?.total_cents ?? 0),
  };
}

function newestOf(lineId: number, replacedBy: ReadonlyMap<number, number>): number {
  const next = replacedBy.get(lineId);
  return next === undefined ? lineId : newestOf(next, replacedBy);
}

function changeOf(was: ComparedLine | undefined, is: ComparedLine | undefined): Changes['lines'][number] {
  const was_cents = was ? lineAmount_cents(was) : null;
  const is_cents = is ? lineAmount_cents(is) : null;
  return {
    description: (is ?? was)?.description ?? '',
    was_cents,
    is_cents,
    difference_cents: (is_cents ?? 0) - (was_cents ?? 0),
  };
}
