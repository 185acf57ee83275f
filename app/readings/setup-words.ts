// A setup card in words, one line a fact.
import { formatAmount } from '../quantities/format-amount.ts';
import { unitNamed } from '../quantities/units.ts';
import type { Setup } from './readings.contract.ts';

export function setupLines(setup: Setup): string[] {
  const air =
    setup.air_pa === null
      ? 'no air'
      : `air ${formatAmount(setup.air_pa, unitNamed('psi'), { decimals: 0 })} psi flowing`;
  return [
    setup.port === '' ? air : `${air}, port ${setup.port}`,
    `dial base on the ${setup.dialBase}, ${setup.dialType} dial of ${setup.dialFaceCounts}`,
    setup.isPistonSeated ? 'piston stroked twice and down' : 'piston not stroked',
    ...(setup.waveState === 'none' ? [] : [`wave plate ${setup.waveState}`]),
    `plates ${setup.plates}`,
    setup.isOpenEndUp ? 'open end up' : 'not open end up',
    ...(setup.mark === '' ? [] : [`mark: ${setup.mark}`]),
  ];
}
