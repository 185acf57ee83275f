// One typed line of a reading: kept as a draft, understood as it is typed, asked about when a lone number could mean two
// things, written when it is clear.
import { useState } from 'react';
import type { HeardTrace } from '../../../app/indicators/indicators.contract.ts';
import { lineField } from '../../../app/readings/line-field.ts';
import type { Reading, Setup } from '../../../app/readings/readings.contract.ts';
import { parseLine, sayBack, type TypedReading, valueOfReading } from '../../../app/readings/typed-line.ts';
import { oddReading } from '../../../app/readings/unlikely-reading.ts';
import { nameVariant } from '../../../app/readings/variant.ts';
import type { ReadingMethod } from '../../../app/specs/spec-sheet.ts';
import type { BenchKey } from '../../components/KeyBar.tsx';
import { useAtCheck } from './at-check.ts';
import { keysWhen } from './keys-when.ts';
import { useBenchDraft } from './use-bench-draft.ts';

export type Meaning = 'air only' | 'total' | null;

type ReadingLineInput = {
  /** What the draft is of: "take 12, spot 3". */
  readonly draftOf: string;
  readonly method: ReadingMethod;
  readonly setup: Setup | null;
  readonly isZeroedAgain: boolean;
  /** What stands at the other spots, in nanometres: a slip is told by them. */
  readonly others: readonly number[];
  /** Writes it to the book; what it throws is shown beside the line. */
  readonly write: (typed: string, meaning: Meaning, heard: HeardTrace | null) => Promise<void>;
};

export type ReadingLine = {
  readonly typed: string;
  /** What it says, as far as it is understood. */
  readonly reading: Pick<Reading, 'push' | 'air' | 'first' | 'second' | 'value' | 'isAirOnly'> | null;
  readonly commit: () => void;
  /** A line the gauge typed, with its trace. */
  readonly accept: (typed: string, heard: HeardTrace | null) => void;
  /** While it is asked whether a lone number by air is the air alone or the whole. */
  readonly answers: readonly BenchKey[];
  /** For the `EntryLine`. */
  readonly entry: {
    readonly value: string;
    readonly onChange: (typed: string) => void;
    readonly onCommit: () => void;
    readonly saidBack: string;
    readonly refusal: string | null;
    readonly isCommitting: boolean;
  };
};

type Stopped = {
  readonly draftOf: string;
  readonly sentence: string;
  /** The line that could mean two things. */
  readonly askedAbout: string | null;
  /** The line that was doubted: Enter again means it. */
  readonly doubted: string | null;
};

export function useReadingLine({
  draftOf,
  method,
  setup,
  isZeroedAgain,
  others,
  write,
}: ReadingLineInput): ReadingLine {
  const { check, settings } = useAtCheck();
  const draft = useBenchDraft(draftOf, '');
  const [lastStop, setStopped] = useState<Stopped | null>(null);
  const [committing, setCommitting] = useState<string | null>(null);
  const typed = draft.value;
  // The next line may be typed while the answer to the last one is still being drawn.
  const stopped = lastStop?.draftOf === draftOf ? lastStop : null;
  const stop = (sentence: string, about: Partial<Pick<Stopped, 'askedAbout' | 'doubted'>> = {}) =>
    setStopped({ draftOf, sentence, askedAbout: null, doubted: null, ...about });
  const field = { ...lineField(check, method, setup, settings), isZeroedAgain };
  // From the pressed plate, a lone number can only be the whole.
  const plainMeaning: Meaning = method === 'air' && isZeroedAgain ? 'total' : null;
  const understood = parseLine(typed, { ...field, meaning: plainMeaning });
  const reading = understood.ok ? understood.value : null;
  const isAsked = stopped !== null && stopped.askedAbout === typed;

  const commit = async (meaning: Meaning = plainMeaning, text = typed, heard: HeardTrace | null = null) => {
    if (committing !== null) return;
    const line = parseLine(text, { ...field, meaning });
    if (!line.ok) return stop(line.refusal.message, line.refusal.code === 'one-number' ? { askedAbout: text } : {});
    const value = valueOfReading(line.value);
    const variant = check.limits.kind === 'variants' && value !== null ? nameVariant(value, check) : null;
    if (variant && !variant.ok) return stop(variant.refusal.message);
    const isMeant = heard !== null || stopped?.doubted === text;
    const odd = value === null || isMeant ? null : oddReading(value, others, check, settings);
    if (odd !== null) return stop(odd, { doubted: text });
    setCommitting(draftOf);
    setStopped(null);
    try {
      await write(text, meaning, heard);
      draft.clear();
    } catch (error) {
      stop(error instanceof Error ? error.message : String(error));
    } finally {
      setCommitting(null);
    }
  };

  const change = (text: string) => {
    // The question stands over what was typed, so its two letters would otherwise become part of the line.
    const answer = isAsked && text.length === typed.length + 1 ? text.replace(typed, '').toLowerCase() : '';
    if (answer === 'a') return void commit('air only');
    if (answer === 't') return void commit('total');
    setStopped(null);
    draft.change(text);
  };

  return {
    typed,
    reading: reading && amountsOf(reading),
    commit: () => void commit(),
    accept: (text, heard) => void commit(plainMeaning, text, heard),
    answers: keysWhen(
      isAsked,
      { key: 'A', words: 'Air only', onPress: () => void commit('air only') },
      { key: 'T', words: 'The whole', onPress: () => void commit('total') },
    ),
    entry: {
      value: typed,
      onChange: change,
      onCommit: () => void commit(),
      saidBack: reading ? sayBack(reading, field) : '',
      refusal: stopped?.sentence ?? null,
      isCommitting: committing === draftOf,
    },
  };
}

function amountsOf(reading: TypedReading) {
  const value = valueOfReading(reading);
  const { first, second } = ('between' in reading && reading.between) || { first: null, second: null };
  if (reading.method !== 'air') return { push: null, air: null, first, second, value, isAirOnly: false };
  return { push: reading.push, air: reading.air, first, second, value, isAirOnly: reading.isAirOnly };
}
