// A plate and a gauge made up, to practise on and to test with: what is true about them is known.

/** What the made-up plate does besides holding well. */
export const practiceKinds = ['steady', 'noisy', 'drifts', 'bounces', 'will not hold'] as const;
export type PracticeKind = (typeof practiceKinds)[number];

export type PlateTruth = { readonly push_nm: number; readonly air_nm: number };

/** One go at a spot, from its beginning: when the hand and the air act, in milliseconds. */
export const practiceTimes_ms = { press: 2000, letGo: 4000, airOn: 6000, airOff: 9500, end: 12000 } as const;

/** The spots in turn, of an invented pack a little cocked; lengths in nanometres. */
export const practiceSpots: readonly PlateTruth[] = [
  { push_nm: 4 * 25_400, air_nm: 23 * 25_400 },
  { push_nm: 4 * 25_400, air_nm: 22 * 25_400 },
  { push_nm: 3 * 25_400, air_nm: 22 * 25_400 },
  { push_nm: 4 * 25_400, air_nm: 24 * 25_400 },
];

const halfThou_nm = 12_700;

/** What the gauge would show after `elapsed_ms` of going round the spots for ever, before it is rounded to its step. */
export function practiceLevel(elapsed_ms: number, kind: PracticeKind): number {
  const go = Math.floor(elapsed_ms / practiceTimes_ms.end);
  const truth = practiceSpots[go % practiceSpots.length] ?? { push_nm: 0, air_nm: 0 };
  const unrest = kind === 'noisy' ? halfThou_nm * noiseAt(elapsed_ms) : 0;
  return plateLevel(truth, elapsed_ms - go * practiceTimes_ms.end, kind) + unrest;
}

/** Where the plate truly is, `at_ms` into one go. */
export function plateLevel(truth: PlateTruth, at_ms: number, kind: PracticeKind): number {
  const { press, letGo, airOn, airOff, end } = practiceTimes_ms;
  const drift = kind === 'drifts' ? (2 * halfThou_nm * at_ms) / end : 0;
  if (at_ms < press) return drift;
  if (at_ms < letGo) return drift - truth.push_nm * approach(at_ms - press, 120);
  if (at_ms < airOn) return drift - truth.push_nm * (1 - approach(at_ms - letGo, 80));
  if (at_ms < airOff) return drift + truth.air_nm * lift(at_ms - airOn, kind);
  return drift + truth.air_nm * lift(airOff - airOn, kind) * (1 - approach(at_ms - airOff, 120));
}

/** How much of the air travel is there, so long after the air came. */
function lift(since_ms: number, kind: PracticeKind): number {
  const up = approach(since_ms, 100);
  if (kind === 'will not hold') return up * Math.exp(-since_ms / 2500);
  if (kind !== 'bounces') return up;
  return up + 0.25 * Math.exp(-since_ms / 220) * Math.sin(since_ms / 40);
}

/** From 0 to 1, all there after five of these times. */
function approach(since_ms: number, time_ms: number): number {
  return since_ms >= 5 * time_ms ? 1 : 1 - Math.exp(-since_ms / time_ms);
}

/** Between −1 and 1, the same at the same time: a scrambled counter (the finaliser of MurmurHash3, public domain). */
export function noiseAt(at_ms: number): number {
  let mixed = Math.imul(Math.floor(at_ms) ^ 0x9e3779b9, 0x85ebca6b);
  mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
  return ((mixed ^ (mixed >>> 16)) >>> 0) / 2 ** 31 - 1;
}

/** The frame a millimetre gauge of this step would send: "+00.5840". */
export function frameOf(level_nm: number, step_nm: number): string {
  const shown = Math.round(level_nm / step_nm) * step_nm;
  const digits = String(Math.abs(shown)).padStart(8, '0');
  return `${shown < 0 ? '-' : '+'}${digits.slice(0, -6)}.${digits.slice(-6)}`;
}
