// How a curve of builds that did not come back is written, on the screen and on paper.
import type { DecimalMark } from '../quantities/format-amount.ts';
import type { CurveTold } from './fleet.contract.ts';
import type { Clock } from './follow-builds.ts';

export const clockWords: Readonly<Record<Clock, string>> = {
  days: 'days in service',
  miles: 'miles since delivery',
  km: 'km since delivery',
  passes: 'passes since delivery',
};

/** "1 build", "12 builds". */
export function count(many: number, one: string, more = `${one}s`): string {
  return `${many} ${many === 1 ? one : more}`;
}

/** A share in per cent with one decimal: "98.5 %". */
export function sayShare(share: number, decimalMark: DecimalMark): string {
  return `${(100 * share).toFixed(1).replace('.', decimalMark)} %`;
}

/** A round or a half time; above ten without a fraction. */
export function sayTime(time: number, decimalMark: DecimalMark): string {
  if (time >= 10) return Math.round(time).toLocaleString(decimalMark === ',' ? 'de-DE' : 'en-US');
  return String(Math.round(time * 10) / 10).replace('.', decimalMark);
}

/** How a curve writes its times and its shares. */
export function chartWords(decimalMark: DecimalMark) {
  return {
    sayTime: (time: number) => sayTime(time, decimalMark),
    sayShare: (share: number) => `${String(Number((100 * share).toFixed(1))).replace('.', decimalMark)} %`,
  };
}

/** Who was followed and how many had not come back at the end, for who cannot see the curve. */
export function curveSentence({ builds, events, atTimes }: CurveTold, clock: Clock, decimalMark: DecimalMark): string {
  const last = atTimes.at(-1);
  const after = last
    ? ` After ${sayTime(last.time, decimalMark)} ${clock} ${sayShare(last.survival, decimalMark)} had not come back.`
    : '';
  return `${count(builds, 'build')} followed, ${events} came back.${after}`;
}
