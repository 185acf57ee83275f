// How the estimates of a clutch are written: the shop's own units, as many figures as an estimate deserves.
import { type DecimalMark, formatAmount } from '../quantities/format-amount.ts';
import { type LengthUnit, unitNamed } from '../quantities/units.ts';
import type { ClutchEstimate, ClutchLoad, ClutchOfJob } from './clutch.contract.ts';

type ShopFigures = { readonly lengthUnit: LengthUnit; readonly decimalMark: DecimalMark };

export type ClutchWords = {
  readonly pressure: (pressure_Pa: number, decimals?: number) => string;
  readonly force: (force_N: number) => string;
  readonly torque: (torque_Nm: number) => string;
  readonly area: (area_m2: number) => string;
  readonly volume: (volume_m3: number) => string;
  readonly time: (time_s: number) => string;
  readonly energy: (energy_J: number) => string;
  readonly rise: (rise_K: number) => string;
  readonly number: (value: number, decimals: number) => string;
  readonly clearance: (length_nm: number) => string;
};

const inch_m = 0.0254;
const britishThermalUnit_J = 1055.05585262;

export function clutchWords({ lengthUnit, decimalMark }: ShopFigures): ClutchWords {
  const isInch = lengthUnit === 'thou';
  const number = (value: number, decimals: number) =>
    value.toFixed(decimals).replace('.', decimalMark).replace('-', '−');
  const write = (amount: number, unit: string, decimals: number) =>
    `${formatAmount(amount, unitNamed(unit), { decimals, decimalMark })} ${unit}`;
  return {
    pressure: (pressure_Pa, decimals) =>
      isInch ? write(pressure_Pa, 'psi', decimals ?? 1) : write(pressure_Pa, 'bar', (decimals ?? 1) + 1),
    force: (force_N) => write(force_N * 1e3, isInch ? 'lbf' : 'N', 0),
    torque: (torque_Nm) => write(torque_Nm * 1e3, isInch ? 'lb-ft' : 'N·m', 0),
    area: (area_m2) => (isInch ? `${number(area_m2 / inch_m ** 2, 3)} in²` : `${number(area_m2 * 1e4, 2)} cm²`),
    volume: (volume_m3) => write(volume_m3 * 1e9, isInch ? 'in³' : 'cm³', isInch ? 3 : 2),
    time: (time_s) => (time_s < 1 ? `${number(time_s * 1e3, 0)} ms` : `${number(time_s, 2)} s`),
    energy: (energy_J) =>
      isInch ? `${number(energy_J / britishThermalUnit_J, 1)} Btu` : `${number(energy_J / 1e3, 1)} kJ`,
    rise: (rise_K) => (isInch ? `${number(rise_K * 1.8, 0)} °F` : `${number(rise_K, 0)} °C`),
    number,
    clearance: (length_nm) => write(length_nm, lengthUnit, lengthUnit === 'thou' ? 1 : 3),
  };
}

/** "Engine torque 220 lb-ft, converter ratio 1.90". */
export function loadSentence({ engineTorque_mNm, converterRatio_millionths }: ClutchLoad, shop: ShopFigures): string {
  const { torque, number } = clutchWords(shop);
  return `Engine torque ${torque(engineTorque_mNm * 1e-3)}, converter ratio ${number(converterRatio_millionths * 1e-6, 2)}`;
}

/** What the shop's copy of the report says of it, one sentence an estimate; none where no figures are. */
export function estimateSentences(
  estimate: ClutchEstimate,
  checkingPressure_Pa: ClutchOfJob['checkingPressure_Pa'],
  shop: ShopFigures,
): string[] {
  const words = clutchWords(shop);
  const { piston, torque, filling } = estimate;
  const sentences: string[] = [];
  if (piston.known) {
    const { startingPressure_Pa, checkingForce_N, checkingNet_N } = piston.known;
    sentences.push(
      `The piston starts at ${words.pressure(startingPressure_Pa)} plus seal drag; ${words.pressure(checkingPressure_Pa, 0)} push with ${words.force(checkingForce_N)}, ${words.force(checkingNet_N)} net of the springs.`,
    );
  }
  if (torque.known) {
    const { wear_Nm, pressure_Nm, asked_Nm, wearMargin } = torque.known;
    const asked =
      asked_Nm === null || wearMargin === null
        ? ''
        : `, ${words.number(wearMargin, 2)} times the ${words.torque(asked_Nm)} asked of it`;
    sentences.push(
      `It holds ${words.torque(wear_Nm)} by uniform wear and ${words.torque(pressure_Nm)} by uniform pressure${asked}.`,
    );
  }
  if (filling.known) {
    const { fillVolume_m3, fillTime_s } = filling.known.today;
    const time = fillTime_s === null ? '' : ` in ${words.time(fillTime_s)}`;
    sentences.push(`It fills with ${words.volume(fillVolume_m3)}${time}.`);
  }
  return sentences;
}
