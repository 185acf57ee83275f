// What clearance does change: the oil that fills it, the time that takes, and the drag of the open pack.
import { accept, type Result, refuse } from '../base/result.ts';
import { type Annulus, annulusArea } from './piston-force.ts';

export type FillAndDrag = {
  readonly clearance_m: number;
  readonly fillVolume_m3: number;
  /** null where no flow is stated. */
  readonly fillTime_s: number | null;
  readonly dragRelativeToToday: number;
};

/**
 * For each clearance: the piston's ring times its travel, that over the flow, and drag relative to today's clearance,
 * which falls with one over it (full film, equal spacing: a ceiling). Refuses no clearances, and any amount that is not
 * above zero. Source: viscous drag between parallel plates, T ∝ 1/h.
 */
export function fillAndDrag(
  clearances_m: readonly number[],
  today_m: number,
  piston: Annulus,
  flow_m3_s: number | null,
): Result<readonly FillAndDrag[]> {
  const area = annulusArea(piston);
  if (!area.ok) return area;
  if (clearances_m.length === 0) return refuse('too-few', 'There is no clearance to work out.');
  if (![...clearances_m, today_m, flow_m3_s ?? 1].every((amount) => amount > 0)) {
    return refuse('not-positive', 'Clearances and flow must be more than zero.');
  }
  return accept(
    clearances_m.map((clearance_m) => {
      const fillVolume_m3 = area.value * clearance_m;
      return {
        clearance_m,
        fillVolume_m3,
        fillTime_s: flow_m3_s === null ? null : fillVolume_m3 / flow_m3_s,
        dragRelativeToToday: today_m / clearance_m,
      };
    }),
  );
}
