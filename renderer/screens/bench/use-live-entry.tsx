// The entry of a step under the gauge that this bench reads: what it offers is accepted by the same key as a typed line.
import { type ReactNode, useRef, useState } from 'react';
import type { ReadingMethod } from '../../../app/specs/spec-sheet.ts';
import { acceptLive } from './accept-live.ts';
import { useAtCheck } from './at-check.ts';
import { GaugeWarning } from './GaugeChoice.tsx';
import { LiveGauge } from './LiveGauge.tsx';
import type { LiveNow } from './live-gauge.ts';
import { wantedBy } from './live-words.ts';
import { useBenchGauge } from './use-bench-gauge.ts';
import type { ReadingLine } from './use-reading-line.ts';

type LiveEntryInput = {
  readonly method: ReadingMethod;
  readonly isZeroedAgain: boolean;
  readonly line: ReadingLine;
  /** Another one begins the spot anew. */
  readonly spotKey: string;
  readonly noteNoHold: () => void;
  /** The gauge was chosen, and warned of, just above. */
  readonly isGaugeAbove?: boolean;
};

type LiveEntry = {
  /** A gauge can read here at all. */
  readonly isReadable: boolean;
  /** One does; the entry then stands small beside it. */
  readonly runs: boolean;
  /** For the filled key: the line as typed, else what the gauge offers. */
  readonly accept: () => void;
  readonly around: (entry: ReactNode) => ReactNode;
};

export function useLiveEntry({
  method,
  isZeroedAgain,
  line,
  spotKey,
  noteNoHold,
  isGaugeAbove = false,
}: LiveEntryInput): LiveEntry {
  const { check, settings, takes } = useAtCheck();
  const gauge = useBenchGauge();
  const wanted = wantedBy(method, check.quantity, isZeroedAgain);
  const live = useRef<LiveNow | null>(null);
  const [refusedAt, refuseAt] = useState<string | null>(null);
  if (gauge === null || wanted === null) {
    return { isReadable: wanted !== null, runs: false, accept: line.commit, around: (entry) => entry };
  }
  const accept = () => {
    if (line.typed.trim() !== '') return line.commit();
    const { decimalMark } = settings;
    const isAccepted = acceptLive(live.current, { line: gauge, decimalMark, entry: line, noteNoHold });
    if (!isAccepted) refuseAt(live.current?.sentence ?? null);
  };
  const gaugeId = gauge.gaugeId ?? takes.at(-1)?.gauge?.gaugeId ?? null;
  const around = (entry: ReactNode) => (
    <LiveGauge
      line={gauge}
      wanted={wanted}
      spotKey={spotKey}
      now={live}
      refusedAt={refusedAt}
      warning={gaugeId !== null && !isGaugeAbove && <GaugeWarning gaugeId={gaugeId} />}
    >
      {entry}
    </LiveGauge>
  );
  return { isReadable: true, runs: true, accept, around };
}
