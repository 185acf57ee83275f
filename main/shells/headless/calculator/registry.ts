// Every computation the calculator offers.
import type { Computation } from './computation.ts';
import { measurementComputations } from './measurement.ts';
import { packComputations } from './packs.ts';
import { selectionComputations } from './selection.ts';

export const computations: readonly Computation[] = [
  ...measurementComputations,
  ...packComputations,
  ...selectionComputations,
];
