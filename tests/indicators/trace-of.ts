// A made-up trace for the tests: the plate of app/indicators/simulated-plate.ts seen by a gauge of a given step and pace.
import type { Sample } from '../../app/indicators/read-line.ts';
import { noiseAt, type PlateTruth, type PracticeKind, plateLevel } from '../../app/indicators/simulated-plate.ts';

export type Seen = {
  readonly truth: PlateTruth;
  readonly kind?: PracticeKind;
  readonly step_nm?: number;
  readonly every_ms?: number;
  readonly noise_nm?: number;
  readonly until_ms?: number;
};

export function traceOf({
  truth,
  kind = 'steady',
  step_nm = 1000,
  every_ms = 50,
  noise_nm = 0,
  until_ms = 9400,
}: Seen) {
  return Array.from({ length: Math.floor(until_ms / every_ms) + 1 }, (_, index): Sample => {
    const at_ms = index * every_ms;
    const level = plateLevel(truth, at_ms, kind) + noise_nm * noiseAt(at_ms);
    return { at_ms, value_nm: Math.round(level / step_nm) * step_nm + 0 };
  });
}
