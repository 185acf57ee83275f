// A setup card said shortly, and the card to begin with when there is none yet.
import { formatAmount } from '../../../app/quantities/format-amount.ts';
import { unitNamed } from '../../../app/quantities/units.ts';
import type { Setup } from '../../../app/readings/readings.contract.ts';
import type { Check, ReadingMethod, WaveState } from '../../../app/specs/spec-sheet.ts';

/** Air for the check is about 40 psi: common practice, no source. 1 psi = 6 894.757 Pa. */
const usualAir_pa = 275_790;

export function usualSetup(waveState: WaveState): Setup {
  return {
    dialBase: 'drum',
    isPistonSeated: true,
    air_pa: usualAir_pa,
    port: '',
    waveState,
    plates: 'soaked',
    isOpenEndUp: true,
    dialType: 'plunger',
    dialFaceCounts: 100,
    mark: '',
  };
}

function airWords(air_pa: number | null): string {
  return air_pa === null ? 'no air' : `${formatAmount(air_pa, unitNamed('psi'), { decimals: 0 })} psi`;
}

/** How a reading is taken, on the line of the unit: the setup by air, else the heading the check stands under. */
export function standsWords(
  check: Pick<Check, 'group' | 'method'>,
  method: ReadingMethod,
  setup: Setup | null,
): string {
  if (setup) return setupWords(setup);
  return method === check.method ? check.group : `by ${method}`;
}

/** "by air, 40 psi, base on the drum, soaked". */
function setupWords(setup: Setup): string {
  const wave = setup.waveState === 'none' ? [] : [`wave plate ${setup.waveState}`];
  return ['by air', airWords(setup.air_pa), `base on the ${setup.dialBase}`, ...wave, setup.plates].join(', ');
}
