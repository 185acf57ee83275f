// The one check of the example unit that was accepted off the practice gauge: what it showed, made up and marked.
import type { Input } from '../../../app/contract/contract.ts';
import { thinTrace } from '../../../app/indicators/kept-trace.ts';
import { plateLevel, practiceTimes_ms } from '../../../app/indicators/simulated-plate.ts';
import { typedOffer } from '../../../app/indicators/typed-offer.ts';

/** Lines of checks by name that were accepted off a gauge instead of typed. */
export type OffTheLine = Readonly<Record<string, Pick<Input<'readings.recordReading'>, 'typed' | 'heard'>>>;

/** The low/reverse pack as found, 12 down and 60 up in thou, seen in the whole micrometres of the gauge. */
const truth = { push_nm: 12 * 25_400, air_nm: 60 * 25_400 };
const step_nm = 1000;
const every_ms = 50;

const seen = (level_nm: number): number => Math.round(level_nm / step_nm) * step_nm;

export function lowReverseOffTheLine(lineId: number): OffTheLine {
  const from_ms = practiceTimes_ms.press - 1000;
  const readings = Math.floor((practiceTimes_ms.airOff - from_ms) / every_ms);
  const heard = Array.from({ length: readings }, (_, index) => {
    const at_ms = index * every_ms;
    return { at_ms, value_nm: seen(plateLevel(truth, from_ms + at_ms, 'steady')) + 0 };
  });
  const [push_nm, air_nm] = [seen(truth.push_nm), seen(truth.air_nm)];
  return {
    'Low/reverse clearance': {
      typed: typedOffer({ kind: 'push and air', push_nm, air_nm }, 'mm', '.'),
      heard: {
        lineId,
        samples: thinTrace(heard).map(({ at_ms, value_nm }) => [at_ms, value_nm]),
        heard: heard.length,
        rest_nm: 0,
        pressed_nm: -push_nm,
        air_nm,
      },
    },
  };
}
