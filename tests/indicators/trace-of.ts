// A made-up trace for the tests: the plate of app/indicators/simulated-plate.ts seen by a gauge of a given step and pace.
import type { Sample } from '../../app/indicators/read-line.ts';
import {
  noiseAt,
  type PlateTruth,
  type PracticeKind,
  plateLevel,
  practiceTimes_ms,
} from '../../app/indicators/simulated-plate.ts';

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

export type Turned = {
  readonly truth: PlateTruth;
  /** Where the plate stands under the gauge once the drum was turned, and how long turning took. */
  readonly turned_nm: number;
  readonly turn_ms: number;
  /** Whether the zero key is pressed then, and whether the hand pushes before the air. */
  readonly isZeroed: boolean;
  readonly isPushed: boolean;
  readonly every_ms: number;
};

const turnedStands_ms = 1500;

/** At rest for a second, the drum turned with the plate's waves running under the gauge, zeroed or not, then a go. */
export function turnedTrace({ truth, turned_nm, turn_ms, isZeroed, isPushed, every_ms }: Turned): readonly Sample[] {
  const turned = 1000 + turn_ms;
  const zeroed = turned + turnedStands_ms;
  const wave_nm = 25_400;
  const go = isPushed ? truth : { ...truth, push_nm: 0 };
  const levelAt = (at_ms: number) => {
    if (at_ms < 1000) return 0;
    const share = Math.min(1, (at_ms - 1000) / turn_ms);
    const turn = turned_nm * share + wave_nm * Math.sin(3 * Math.PI * share);
    if (at_ms < zeroed) return turn;
    return (isZeroed ? 0 : turned_nm) + plateLevel(go, at_ms - zeroed, 'steady');
  };
  const until_ms = zeroed + practiceTimes_ms.airOff - 100;
  return Array.from({ length: Math.floor(until_ms / every_ms) + 1 }, (_, index) => {
    const at_ms = index * every_ms;
    return { at_ms, value_nm: Math.round(levelAt(at_ms) / 1000) * 1000 + 0 };
  });
}

/** The truth's go up to its air, which stands for a while and is then lost. */
export function leakingTrace(truth: PlateTruth, stands_ms: number, leak_ms: number, every_ms: number) {
  const { airOn, airOff } = practiceTimes_ms;
  return Array.from({ length: Math.floor(airOff / every_ms) }, (_, index): Sample => {
    const at_ms = index * every_ms;
    const since_ms = at_ms - airOn - stands_ms;
    const share = since_ms > 0 ? Math.exp(-since_ms / leak_ms) : 1;
    const level = plateLevel(truth, at_ms, 'steady');
    return { at_ms, value_nm: Math.round((at_ms < airOn ? level : level * share) / 1000) * 1000 + 0 };
  });
}
