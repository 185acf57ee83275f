// One line at one spot: the order, the huge entry, and what the lines so far come to.
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import type { NoteKind } from '../../../app/readings/readings.contract.ts';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { EntryLine } from '../../components/EntryLine.tsx';
import type { BenchKey } from '../../components/KeyBar.tsx';
import { Notice } from '../../components/Notice.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useBenchHabits } from '../../frame/bench-habits.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { AroundDrum } from './AroundDrum.tsx';
import { useAtCheck } from './at-check.ts';
import type { Go, Step } from './bench-step.ts';
import { CheckPage } from './CheckPage.tsx';
import { entryLabel } from './entry-words.ts';
import { GaugeChoice, useGaugeChoice } from './GaugeChoice.tsx';
import { keysWhen } from './keys-when.ts';
import { ReadPrompt } from './ReadPrompt.tsx';
import { ReadSoFar } from './ReadSoFar.tsx';
import styles from './ReadStep.module.css';
import { useReadingActs } from './reading-acts.ts';
import {
  draftOfSpot,
  phaseWords,
  type ReadingPlan,
  spotsOf,
  spotToRead,
  standingReadings,
  valuesAtOthers,
  wasRead,
} from './reading-plan.ts';
import { SaidBack } from './SaidBack.tsx';
import { standsWords } from './setup-words.ts';
import { soundOf } from './sounds.ts';
import { useBeside } from './use-beside.tsx';
import { useLiveEntry } from './use-live-entry.tsx';
import { useReadingLine } from './use-reading-line.ts';
import { useWhy } from './use-why.ts';
import { WhyPanel } from './WhyPanel.tsx';

export function ReadStep({ step, go }: { step: Extract<Step, { at: 'read' }>; go: Go }) {
  const at = useAtCheck();
  const { check, takes } = at;
  const { plan, rounds } = step;
  const take = plan === null ? (takes.at(-1) ?? null) : null;
  const beside = useBeside(take);
  const begun = plan ?? take;
  const method = begun?.method ?? check.method;
  // A check by air has a step before this one, where the gauge is chosen; any other is read at once.
  const choosesGauge = plan !== null && check.method !== 'air';
  const choice = useGaugeChoice(method);
  const [spotBack, goBackTo] = useState<number | null>(null);
  const [isZeroedAgain, setZeroedAgain] = useState(false);
  const [said, say] = useState('');
  const why = useWhy();
  // A new entry takes the focus back from the key that was pressed.
  const [entryNumber, setEntryNumber] = useState(0);
  const acts = useReadingActs();
  const navigate = useNavigate();
  const { habits } = useBenchHabits();
  // What happened at the spot begins it anew.
  const [goNumber, setGoNumber] = useState(0);
  const spot = spotBack ?? (take && spotToRead(take, check, rounds, habits.order)) ?? 1;
  const standing = take ? standingReadings(take) : [];
  const reads = standing.filter((reading) => reading.spot === spot).length;
  const setup = begun?.setup ?? null;

  const line = useReadingLine({
    draftOf: draftOfSpot(take, at, spot),
    method,
    setup,
    isZeroedAgain,
    others: valuesAtOthers(standing, spot),
    write: async (typed, meaning, heard) => {
      const of = take ?? (plan && (choosesGauge ? { ...plan, gaugeId: choice.gaugeId } : plan));
      if (!of) return;
      const after = await acts.record(of, { spot, typed, isZeroedAgain, meaning, heard });
      if (habits.hasSounds) soundOf(after, spot);
      goBackTo(null);
      setZeroedAgain(false);
      say('');
      if (spotToRead(after, check, rounds, habits.order) === null) go({ at: 'result' });
      else if (plan) go({ at: 'read', plan: null, rounds });
    },
  });

  const back = (act: () => void) => () => {
    act();
    setEntryNumber((number) => number + 1);
  };
  const note = (what: NoteKind, sentence: string) => () => {
    const told = back(() => {
      say(sentence);
      setGoNumber((number) => number + 1);
    });
    if (take) acts.noteThen(take.takeId, spot, what, told);
  };
  const end = (what: NoteKind) => () => {
    if (take) acts.noteThen(take.takeId, spot, what, () => go({ at: 'result' }));
  };
  const isByAir = method === 'air';
  const here = standing.findLast((reading) => reading.spot === spot) ?? standing.at(-1);
  const redo = () => here && go({ at: 'redo', readingId: here.readingId, back: step });
  const changePlan = (part: Partial<ReadingPlan>) => plan && go({ ...step, plan: { ...plan, ...part } });
  const otherPhase = plan?.phase === 'as found' ? 'final' : 'as found';
  const canNote = isByAir && take !== null;
  const spotKey = `${take?.takeId ?? 0} ${spot} ${reads} ${isZeroedAgain} ${goNumber}`;
  const noteNoHold = end('will not hold air');
  const live = useLiveEntry({ method, isZeroedAgain, line, spotKey, noteNoHold, isGaugeAbove: choosesGauge });
  const keys: BenchKey[] = [
    { key: 'Enter', words: 'Accept', isFilled: true, onPress: back(live.accept) },
    ...line.answers,
    ...keysWhen(here !== undefined, { key: 'R', words: 'Redo', onPress: redo }),
    ...keysWhen(spot > 1, { key: 'B', words: 'Back a spot', onPress: back(() => goBackTo(spot - 1)) }),
    ...keysWhen(
      canNote,
      {
        key: 'Z',
        words: isZeroedAgain ? 'Not zeroed again' : 'Zeroed again',
        onPress: back(() => setZeroedAgain(!isZeroedAgain)),
      },
      {
        key: 'L',
        words: 'Lost zero',
        onPress: note('lost zero', 'Lost zero, noted. Zero the dial and do this spot again.'),
      },
      { key: 'H', words: 'Will not hold', isRare: true, onPress: end('will not hold air') },
    ),
    ...keysWhen(standing.length > 0, { key: 'E', words: 'Enough', isRare: true, onPress: end('enough') }),
    ...keysWhen(
      canNote,
      {
        key: 'N',
        words: 'Not back to zero',
        isRare: 'always',
        onPress: note('not back to zero', 'Not back to zero, noted. Do this spot again.'),
      },
      {
        key: 'P',
        words: 'Plates re-clocked',
        isRare: 'always',
        onPress: note('plates re-clocked', 'Plates re-clocked, noted.'),
      },
    ),
    ...keysWhen(plan !== null && !isByAir, {
      key: 'F',
      words: `It is ${otherPhase}`,
      onPress: back(() => changePlan({ phase: otherPhase })),
    }),
    ...keysWhen(live.isReadable, {
      key: 'G',
      words: 'Gauge and pedal',
      isRare: 'always',
      onPress: () => void navigate({ to: '/lines' }),
    }),
    ...keysWhen(take !== null && take.evaluation.budget.length > 0, {
      key: '?',
      words: 'Why',
      isRare: 'always',
      onPress: back(why.turn),
    }),
  ];

  const entry = (
    <EntryLine
      key={`${spot} ${reads} ${entryNumber}`}
      label={entryLabel(check, method, isZeroedAgain)}
      size={live.runs ? 'key' : 'read'}
      placeholder={live.runs ? 'type it' : ''}
      {...line.entry}
      saidBack={<SaidBack words={line.entry.saidBack} />}
    />
  );

  return (
    <CheckPage
      phase={take ? phaseWords(take) : (plan?.phase ?? null)}
      stands={standsWords(check, method, setup)}
      prompt={
        <ReadPrompt
          method={method}
          spot={spot}
          spots={begun ? spotsOf(begun, check) : 1}
          reads={reads}
          why={
            (spotBack !== null && reads > 0
              ? 'R puts right what stands here; a line typed now is one more read.'
              : null) ??
            take?.evaluation.asks.find((ask) => ask.spot === spot)?.why ??
            null
          }
        />
      }
      keys={keys}
      aside={
        why.isOpen && take ? (
          <WhyPanel evaluation={take.evaluation} />
        ) : take && spotsOf(take, check) > 1 && take.evaluation.spots.length > 0 ? (
          <>
            <AroundDrum take={take} isShort />
            {beside}
          </>
        ) : (
          beside
        )
      }
    >
      {choosesGauge && <GaugeChoice choice={choice} />}
      {live.around(entry)}
      {said !== '' && <Notice kind="done">{said}</Notice>}
      {isZeroedAgain && (
        <Notice kind="done">Zeroed again on the pressed plate: its air travel is the whole clearance.</Notice>
      )}
      {method === 'drop' && (
        <Notice kind="caution">
          Air a touch first. Rag over the other ports, eyes and ears protected, never on skin.
        </Notice>
      )}
      <FailureSentence error={acts.error} />
      {plan && wasRead(takes) && (
        <EnterThrough label="Before it" onFinish={back(() => undefined)} className={styles.note}>
          <TextField
            label="What was changed before it"
            size="bench"
            value={plan.note}
            onChange={(text) => changePlan({ note: text })}
          />
        </EnterThrough>
      )}
      {take && <ReadSoFar take={take} typing={{ spot, line: line.reading }} />}
    </CheckPage>
  );
}
