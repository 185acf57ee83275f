// Every computation the calculator offers.
import { clutchComputations } from './clutch.ts';
import type { Computation } from './computation.ts';
import { distributionComputations } from './distributions.ts';
import { fleetComputations } from './fleet.ts';
import { gaugeComputations } from './gauges.ts';
import { measurementComputations } from './measurement.ts';
import { packComputations } from './packs.ts';
import { selectionComputations } from './selection.ts';

export const computations: readonly Computation[] = [
  ...measurementComputations,
  ...distributionComputations,
  ...packComputations,
  ...selectionComputations,
  ...gaugeComputations,
  ...fleetComputations,
  ...clutchComputations,
];
