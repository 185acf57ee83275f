// A line was misread: why, and what stands in its place. The misread one is kept.
import { useState } from 'react';
import { EntryLine } from '../../components/EntryLine.tsx';
import type { BenchKey } from '../../components/KeyBar.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useAtCheck } from './at-check.ts';
import type { Go, Step } from './bench-step.ts';
import { CheckPage } from './CheckPage.tsx';
import { entryLabel } from './entry-words.ts';
import { keysWhen } from './keys-when.ts';
import { ReadsTable } from './ReadsTable.tsx';
import { useReadingActs } from './reading-acts.ts';
import { phaseWords, spotName, spotToRead, standingReadings, valuesAtOthers } from './reading-plan.ts';
import { SaidBack } from './SaidBack.tsx';
import { standsWords } from './setup-words.ts';
import { useBeside } from './use-beside.tsx';
import { useLiveEntry } from './use-live-entry.tsx';
import { useReadingLine } from './use-reading-line.ts';

const reasons = ['misread the dial', 'typed it wrong', 'the dial was bumped', 'not back to zero'] as const;

export function RedoStep({ step, go }: { step: Extract<Step, { at: 'redo' }>; go: Go }) {
  const { check, takes } = useAtCheck();
  const take = takes.findLast((each) => each.readings.some((reading) => reading.readingId === step.readingId)) ?? null;
  const beside = useBeside(take);
  const misread = take?.readings.find((reading) => reading.readingId === step.readingId);
  const [reason, choose] = useState<string | null>(null);
  const [isZeroedAgain, setZeroedAgain] = useState(false);
  const acts = useReadingActs();
  const line = useReadingLine({
    draftOf: `in place of reading ${step.readingId}`,
    method: take?.method ?? check.method,
    setup: take?.setup ?? null,
    isZeroedAgain,
    others: take && misread ? valuesAtOthers(standingReadings(take), misread.spot) : [],
    write: async (typed, meaning, heard) => {
      const { readingId } = step;
      const why = reason ?? reasons[0];
      const after = await acts.supersede({ readingId, typed, isZeroedAgain, meaning, reason: why, heard });
      go(spotToRead(after, check, null) === null ? { at: 'result' } : step.back);
    },
  });
  const method = take?.method ?? check.method;
  const live = useLiveEntry({
    method,
    isZeroedAgain,
    line,
    spotKey: `in place of ${step.readingId} ${isZeroedAgain}`,
    noteNoHold: () => {
      if (take && misread) acts.noteThen(take.takeId, misread.spot, 'will not hold air', () => go({ at: 'result' }));
    },
  });
  if (!take || !misread) return null;
  const before = standingReadings(take).findLast((reading) => reading.readingId < misread.readingId);
  const older = keysWhen(before !== undefined, {
    key: 'O',
    words: 'The one before it',
    onPress: () => before && go({ ...step, readingId: before.readingId }),
  });
  const leave = { key: 'B', words: 'Leave it as it is', onPress: () => go(step.back) };
  const whys: BenchKey[] = reasons.map((words, index) => ({
    key: index === 0 ? 'Enter' : String(index + 1),
    words: words.charAt(0).toUpperCase() + words.slice(1),
    isFilled: index === 0,
    onPress: () => choose(words),
  }));
  const zeroed = isZeroedAgain ? 'Not zeroed again' : 'Zeroed again';
  const puts: BenchKey[] = [
    { key: 'Enter', words: 'Put it in its place', isFilled: true, onPress: live.accept },
    ...line.answers,
    ...keysWhen(take.method === 'air', { key: 'Z', words: zeroed, onPress: () => setZeroedAgain(!isZeroedAgain) }),
  ];
  const place = check.spots > 1 ? ` at spot ${misread.spot}, ${spotName(misread.spot, check.spots)}` : '';
  return (
    <CheckPage
      phase={phaseWords(take)}
      stands={standsWords(check, take.method, take.setup)}
      prompt={
        <h1 className="say">
          {reason === null ? (
            <>
              What was wrong with <b>{misread.typed}</b>
              {place}?
            </>
          ) : (
            <>
              In place of <b>{misread.typed}</b>
              {place}: what is right?
            </>
          )}
        </h1>
      }
      keys={reason === null ? [...whys, ...older, leave] : [...puts, leave]}
      aside={beside}
    >
      {reason !== null &&
        live.around(
          <EntryLine
            label={entryLabel(check, take.method, isZeroedAgain)}
            size={live.runs ? 'key' : 'read'}
            placeholder={live.runs ? 'type it' : ''}
            {...line.entry}
            saidBack={<SaidBack words={line.entry.saidBack} />}
          />,
        )}
      <FailureSentence error={acts.error} />
      <ReadsTable take={take} />
    </CheckPage>
  );
}
