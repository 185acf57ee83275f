// What a hand types for what is true: readings around the drum with the scatter a new shop states, leaves, single
// readings, always as short as they are written at a bench.
import type { Phase, Setup } from '../../../../app/readings/readings.contract.ts';
import { startingSettings } from '../../../../app/shop/starting-settings.ts';
import type { Check } from '../../../../app/specs/spec-sheet.ts';
import type { Draw } from './draw.ts';
import type { PackToBuild } from './families.ts';
import type { PlantedReading, PlantedTake } from './planted-ticket.ts';
import { plantedTruth } from './planted-truth.ts';

const { repeatability_nm } = startingSettings({ shopName: '', lengthUnit: 'thou', paper: 'letter' });
const handScatter = repeatability_nm / 25_400;
/** A drum is never quite square to its pack: one standard deviation of the tilt, in thou. */
const tilt = 0.9;

export type When = { readonly hand: number; readonly at: string; readonly phase: Phase };

/** How the dial stands here; only the port and the plates differ from unit to unit. */
export function usualSetup({ port, clearance }: PackToBuild, plates: Setup['plates']): Setup {
  return {
    dialBase: 'drum',
    isPistonSeated: true,
    air_pa: 275_790,
    port,
    waveState: clearance.waveState,
    plates,
    isOpenEndUp: true,
    dialType: 'plunger',
    dialFaceCounts: 100,
    mark: 'paint dot on the drum',
  };
}

/** What the clearance is at each spot, in thou. */
function aroundTheDrum(draw: Draw, clearance: number, spots: number): number[] {
  const amplitude = draw.normal(0, tilt);
  const turned = draw.whole(0, 359);
  return Array.from(
    { length: spots },
    (_, spot) => clearance + amplitude * Math.cos(((360 / spots) * spot - turned) * (Math.PI / 180)),
  );
}

/** By air: push-down and travel in whole thou, the first spot once more where it is repeated. */
export function airTake(
  draw: Draw,
  pack: PackToBuild,
  {
    clearance,
    plates,
    isRepeated,
    ...when
  }: When & { clearance: number; plates: Setup['plates']; isRepeated: boolean },
): PlantedTake {
  const values = aroundTheDrum(draw, clearance, pack.clearance.spots);
  const line = (value: number) => {
    const push = draw.whole(3, 6);
    return `${push} ${Math.max(0, Math.round(draw.normal(value, handScatter)) - push)}`;
  };
  const readings = values.map((value, index): PlantedReading => ({ spot: index + 1, typed: line(value) }));
  const again = isRepeated ? [{ spot: 1, typed: line(values[0] ?? clearance) }] : [];
  return {
    ...when,
    check: pack.clearance.name,
    method: 'air',
    setup: usualSetup(pack, plates),
    mockUp: null,
    readings: [...readings, ...again],
  };
}

/** By feeler in the hand whose leaves read high. */
export function feelerTake(
  draw: Draw,
  pack: PackToBuild,
  { clearance, ...when }: When & { clearance: number },
): PlantedTake {
  const { readsHigh, scatter } = plantedTruth.feeler;
  const readings = aroundTheDrum(draw, clearance, pack.clearance.spots).map((value, index): PlantedReading => {
    const goes = Math.max(1, Math.floor(draw.normal(value + readsHigh, scatter)));
    return { spot: index + 1, typed: `${goes} ${goes + 1}` };
  });
  return { ...when, check: pack.clearance.name, method: 'feeler', setup: null, mockUp: null, readings };
}

/** One number, in the unit of its check. */
export function singleTake(
  check: Check,
  { value, decimals, ...when }: When & { value: number; decimals: number },
): PlantedTake {
  return {
    ...when,
    check: check.name,
    method: check.method,
    setup: null,
    mockUp: null,
    readings: [{ spot: 1, typed: Math.max(0, value).toFixed(decimals) }],
  };
}
