// What changed between two states of a ticket, line by line, so that a customer can be told before paying.
import { lineAmount_cents, type PricedLine, totalsOf } from './estimate-total.ts';

export type ComparedLine = PricedLine & { readonly lineId: number; readonly description: string };

export type Priced = { readonly lines: readonly ComparedLine[]; readonly taxPerHundredThousand: number };

export type Changes = {
  lines: Array<{
    /** The line as it is now, or the one that is no more. */
    lineId: number;
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
    return [changeOf(was, is ?? null, is ?? was)];
  });
  const added = now.lines.filter((line) => !kept.has(line.lineId)).map((line) => changeOf(null, line, line));
  const then = totalsOf(before.lines, before.taxPerHundredThousand);
  const today = totalsOf(now.lines, now.taxPerHundredThousand);
  return {
    lines: [...changed, ...added],
    tax_difference_cents: today.tax_cents - then.tax_cents,
    total_difference_cents: today.total_cents - then.total_cents,
  };
}

function newestOf(lineId: number, replacedBy: ReadonlyMap<number, number>): number {
  const next = replacedBy.get(lineId);
  return next === undefined ? lineId : newestOf(next, replacedBy);
}

function changeOf(was: ComparedLine | null, is: ComparedLine | null, { lineId, description }: ComparedLine) {
  const was_cents = was && lineAmount_cents(was);
  const is_cents = is && lineAmount_cents(is);
  return { lineId, description, was_cents, is_cents, difference_cents: (is_cents ?? 0) - (was_cents ?? 0) };
}
