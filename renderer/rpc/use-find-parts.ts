// Parts in use that hold what is typed, to be chosen from while typing.
import type { PartLine } from '../../app/stock/parts.contract.ts';
import type { Suggestion } from '../components/SuggestField.tsx';
import { useRead } from './use-read.ts';

const mostOffered = 8;

/** Nothing while nothing is typed. */
export function useFindParts(typed: string): {
  readonly parts: readonly PartLine[];
  readonly suggestions: readonly Suggestion[];
} {
  const text = typed.trim();
  const input = { text, kind: null, familyId: null, only: 'in use', offset: 0, limit: mostOffered } as const;
  const found = useRead('stock.listParts', text === '' ? null : input, { keepsLast: true });
  const parts = text === '' ? [] : (found.data?.parts ?? []);
  const suggestions = parts.map(({ partId, number, description, onHand }) => ({
    id: partId,
    words: number,
    note: `${description}, ${onHand} on hand`,
  }));
  return { parts, suggestions };
}
