// The trace that is kept with a reading: thinned without losing an extreme, and packed small.
import type { Sample } from './read-line.ts';

/** A kept trace is drawn a hand wide; more points than this would fall on each other. */
export const mostKeptSamples = 240;

/**
 * At most about `most` of the samples: the first, the last, and of every equal stretch of time between them the lowest
 * and the highest, each at its own time. No peak and no dip is lost, only how often a level was shown.
 */
export function thinTrace(samples: readonly Sample[], most = mostKeptSamples): readonly Sample[] {
  const [first, last] = [samples[0], samples.at(-1)];
  if (!first || !last || samples.length <= most) return samples;
  const stretches = Math.max(1, Math.floor(most / 2) - 1);
  const length_ms = Math.max(1, (last.at_ms - first.at_ms) / stretches);
  const extremes = new Map<number, { lowest: number; highest: number }>();
  samples.forEach(({ at_ms, value_nm }, index) => {
    const stretch = Math.min(stretches - 1, Math.floor((at_ms - first.at_ms) / length_ms));
    const at = extremes.get(stretch) ?? { lowest: index, highest: index };
    if (value_nm < (samples[at.lowest]?.value_nm ?? 0)) at.lowest = index;
    if (value_nm > (samples[at.highest]?.value_nm ?? 0)) at.highest = index;
    extremes.set(stretch, at);
  });
  const kept = new Set([0, samples.length - 1]);
  for (const { lowest, highest } of extremes.values()) kept.add(lowest).add(highest);
  return [...kept].sort((left, right) => left - right).flatMap((index) => samples[index] ?? []);
}

/**
 * Whole milliseconds and nanometres as differences from the one before, each seven bits a byte (LEB128) with its sign
 * in the lowest bit: about five bytes a reading.
 */
export function packTrace(samples: readonly Sample[]): Uint8Array {
  const bytes: number[] = [];
  let [at, value] = [0, 0];
  for (const sample of samples) {
    pushNumber(bytes, sample.at_ms - at);
    pushNumber(bytes, sample.value_nm - value);
    [at, value] = [sample.at_ms, sample.value_nm];
  }
  return Uint8Array.from(bytes);
}

export function unpackTrace(bytes: Uint8Array): readonly Sample[] {
  const samples: Sample[] = [];
  let [at_ms, value_nm, place, numbers] = [0, 0, 0, 0];
  while (place < bytes.length) {
    let [scaled, factor] = [0, 1];
    for (; (bytes[place] ?? 0) > 0x7f; place += 1, factor *= 128) scaled += ((bytes[place] ?? 0) & 0x7f) * factor;
    scaled += (bytes[place] ?? 0) * factor;
    place += 1;
    const number = scaled % 2 === 0 ? scaled / 2 : -(scaled - 1) / 2;
    if (numbers % 2 === 0) at_ms += number;
    else {
      value_nm += number;
      samples.push({ at_ms, value_nm });
    }
    numbers += 1;
  }
  return samples;
}

function pushNumber(bytes: number[], number: number): void {
  let rest = number < 0 ? -2 * number + 1 : 2 * number;
  while (rest > 0x7f) {
    bytes.push((rest % 128) + 128);
    rest = Math.floor(rest / 128);
  }
  bytes.push(rest);
}
