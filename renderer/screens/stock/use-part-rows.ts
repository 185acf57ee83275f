// The rows of the parts list, read a page at a time as they come into sight.
import { useRef } from 'react';
import type { PartLine } from '../../../app/stock/parts.contract.ts';
import { useRead } from '../../rpc/use-read.ts';
import type { PartsFilter } from './parts-view.ts';

const page = 100;

export type PartRows = {
  readonly total: number;
  /** Undefined while it is looked up. */
  readonly at: (index: number) => PartLine | undefined;
};

type Kept = { readonly of: string; readonly total: number; readonly pages: Map<number, readonly PartLine[]> };

/**
 * The rows from `first` to `last`, which lie on two pages at most; null until the first have come. While a new filter
 * is looked up the rows of the one before are left standing.
 */
export function usePartRows(
  filter: PartsFilter,
  first: number,
  last: number,
): { readonly rows: PartRows | null; readonly error: Error | null } {
  const from = pageOf(first);
  const to = pageOf(last);
  const near = useRead('stock.listParts', { ...filter, offset: from, limit: page });
  const far = useRead('stock.listParts', to === from ? null : { ...filter, offset: to, limit: page });

  const kept = useRef<Kept | null>(null);
  const of = JSON.stringify(filter);
  for (const [offset, read] of [
    [from, near],
    [to, far],
  ] as const) {
    if (!read.data) continue;
    const { total, parts } = read.data;
    const pages = kept.current?.of === of ? kept.current.pages : new Map<number, readonly PartLine[]>();
    pages.set(offset, parts);
    kept.current = { of, total, pages };
  }
  const known = kept.current;
  return {
    rows: known && { total: known.total, at: (index) => known.pages.get(pageOf(index))?.[index % page] },
    error: near.error ?? far.error,
  };
}

function pageOf(index: number): number {
  return index - (index % page);
}
