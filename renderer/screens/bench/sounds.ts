// What is heard at the bench, for eyes that are on the dial: accepted, once more, out of the band.
import type { Take } from '../../../app/readings/readings.contract.ts';

type Tone = readonly [from_s: number, for_s: number, pitch_hz: number];

const tones: Record<'accepted' | 'once more' | 'out', readonly Tone[]> = {
  accepted: [[0, 0.08, 1320]],
  'once more': [
    [0, 0.1, 880],
    [0.18, 0.1, 880],
  ],
  out: [[0, 0.45, 330]],
};

let context: AudioContext | null = null;

/** Sounds what a line that was just written came to. */
export function soundOf(take: Take, spot: number): void {
  const { asks, verdict } = take.evaluation;
  const isOut = verdict.word === 'tight' || verdict.word === 'loose';
  sound(asks.some((ask) => ask.spot === spot) ? 'once more' : isOut ? 'out' : 'accepted');
}

function sound(what: keyof typeof tones): void {
  // A machine without sound still reads clutches.
  context ??= typeof AudioContext === 'undefined' ? null : new AudioContext();
  if (!context) return;
  void context.resume();
  const now = context.currentTime;
  for (const [from, length, pitch] of tones[what]) {
    const [tone, volume] = [context.createOscillator(), context.createGain()];
    tone.frequency.value = pitch;
    // Faded at both ends, or it clicks.
    volume.gain.setValueAtTime(0, now + from);
    volume.gain.linearRampToValueAtTime(0.4, now + from + 0.01);
    volume.gain.setValueAtTime(0.4, now + from + length - 0.02);
    volume.gain.linearRampToValueAtTime(0, now + from + length);
    tone.connect(volume).connect(context.destination);
    tone.start(now + from);
    tone.stop(now + from + length);
  }
}
