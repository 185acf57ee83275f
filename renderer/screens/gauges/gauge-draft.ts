// What is typed about a gauge until it is saved.
import type { Input } from '../../../app/contract/contract.ts';
import { type GaugeKind, mayStandOffSquare } from '../../../app/gauges/gauge-kinds.ts';
import type { Gauge } from '../../../app/gauges/register.contract.ts';

export type GaugeDraft = {
  readonly kind: GaugeKind;
  readonly tag: string;
  readonly unit: string;
  readonly resolution: string;
  readonly permittedError: string;
  readonly statedIn: string;
  readonly offSquareDegrees: string;
  readonly serial: string;
  readonly intervalDays: string;
};

export const blankGauge: GaugeDraft = {
  kind: 'dial plunger',
  tag: '',
  unit: 'thou',
  resolution: '',
  permittedError: '',
  statedIn: '',
  offSquareDegrees: '',
  serial: '',
  intervalDays: '',
};

export function draftOf(gauge: Gauge, bare: (amount: number) => string): GaugeDraft {
  return {
    kind: gauge.kind,
    tag: gauge.tag,
    unit: gauge.unit,
    resolution: bare(gauge.resolution),
    permittedError: gauge.permittedError === null ? '' : bare(gauge.permittedError),
    statedIn: gauge.statedIn,
    offSquareDegrees: gauge.offSquareDegrees === 0 ? '' : String(gauge.offSquareDegrees),
    serial: gauge.serial,
    intervalDays: gauge.intervalDays === null ? '' : String(gauge.intervalDays),
  };
}

/** Why a field cannot be saved as it is; empty when the whole of it can. */
export function refusalsOf(draft: GaugeDraft): Partial<Record<keyof GaugeDraft, string>> {
  const off = draft.offSquareDegrees.trim();
  const days = draft.intervalDays.trim();
  return {
    ...(draft.tag.trim() === '' && { tag: 'Say what stands on it.' }),
    ...(draft.resolution.trim() === '' && { resolution: 'Say what one step of it is.' }),
    ...(!/^([0-5]?\d|60)?$/.test(off) && { offSquareDegrees: 'Type whole degrees up to 60.' }),
    ...(!/^([1-9]\d{0,2}|[1-2]\d{3}|3[0-5]\d\d|36[0-5]\d|3660)?$/.test(days) && {
      intervalDays: 'Type whole days, up to 3660.',
    }),
  };
}

export function gaugeOf(draft: GaugeDraft, gaugeId: number | null, by: number): Input<'gauges.saveGauge'> {
  return {
    ...draft,
    gaugeId,
    offSquareDegrees: mayStandOffSquare(draft.kind) ? Number(draft.offSquareDegrees) : 0,
    intervalDays: draft.intervalDays.trim() === '' ? null : Number(draft.intervalDays),
    by,
  };
}
