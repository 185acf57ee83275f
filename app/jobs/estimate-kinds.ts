// The kinds of lines in the order they stand in, on the screen and on paper, under the headings they stand under.
import type { LineKind } from './estimate.contract.ts';

export const kindsInOrder = ['labour', 'kit', 'part', 'sublet', 'core charge', 'other'] as const satisfies LineKind[];

/** Over the lines of a kind. */
export const kindHeadings: Record<LineKind, string> = {
  labour: 'Labour',
  kit: 'Kits',
  part: 'Parts',
  sublet: 'Sublet work',
  'core charge': 'Core charges',
  other: 'Other',
};

/** Whether a line of this kind is taxed unless somebody says otherwise. */
export function isUsuallyTaxed(kind: LineKind, { isLabourTaxable }: { readonly isLabourTaxable: boolean }): boolean {
  return kind === 'labour' || kind === 'sublet' ? isLabourTaxable : true;
}
