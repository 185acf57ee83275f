// One line of a list on a job: what it asks, how it stands, and the keys or the entry that answer it at once.
import { type KeyboardEvent, useId, useRef, useState } from 'react';
import { parseAnswer, sayAnswer, sayAsks } from '../../../app/jobs/answer-text.ts';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import type { Answer, LineOfJob } from '../../../app/jobs/lists.contract.ts';
import { Button } from '../../components/Button.tsx';
import { TextField } from '../../components/TextField.tsx';
import { Verdict } from '../../components/Verdict.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useWrite } from '../../rpc/use-write.ts';
import { sayDayAndTime } from '../../text/say-date.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './ListsOfJob.module.css';

const marks = { open: 'not read', good: 'in', off: 'high', 'does not apply': 'not read' } as const;
const doesNotApply: Answer = { kind: 'does not apply' };
const notSo: Answer = { kind: 'not so' };

type LineProps = { job: Job; line: LineOfJob; onAnswered: (line: HTMLElement) => void };

export function LineOfList({ job, line, onAnswered }: LineProps) {
  const { lineId, words, asks, given, standing, isSettled, earlier } = line;
  const { person } = useAtBench();
  const write = useWrite('jobs.answerLine');
  const [isAgain, setAgain] = useState(false);
  const [isAnswered, setAnswered] = useState(false);
  const row = useRef<HTMLLIElement>(null);
  const wordsId = useId();
  const answer = (given: Answer, reason = '') => {
    if (write.isPending) return;
    setAnswered(true);
    write.mutate(
      { jobId: job.jobId, lineId, answer: given, reason, by: person.personId },
      {
        onSuccess: ({ standing, isSettled }) => {
          setAgain(false);
          // Where a reason is asked for, its entry takes the hand when it is drawn.
          if (row.current && (standing !== 'off' || isSettled)) onAnswered(row.current);
        },
      },
    );
  };
  const isAsked = !job.isClosed && (given === null || isAgain);
  const needsReason = !job.isClosed && !isAgain && given !== null && standing === 'off' && !isSettled;
  return (
    <li
      ref={row}
      className={styles.line}
      data-line={isSettled ? 'settled' : given === null ? 'open' : 'off'}
      aria-label={words}
      onKeyDown={(event) => answerByKey(event, line, answer)}
    >
      <span className={styles.words}>
        <span id={wordsId}>{words}</span>{' '}
        <span className={styles.beside}>{asks.kind === 'choice' && isAsked ? '' : sayAsks(asks)}</span>
        {given && (
          <span className={styles.beneath}>
            {given.by}, {sayDayAndTime(given.at)}
            {earlier > 0 && `, answered ${earlier + 1} times`}
            {given.reason !== '' && `: ${given.reason}`}
          </span>
        )}
      </span>
      <span className={styles.said}>
        <Verdict verdict={marks[standing]} words={given ? sayAnswer(asks, given.answer) : 'open'} />
      </span>
      <span className={styles.keys}>
        {isAsked && (
          <AnswerKeys jobId={job.jobId} line={line} wordsId={wordsId} onAnswer={answer} isPending={write.isPending} />
        )}
        {!isAsked && !job.isClosed && (
          <span data-hand>
            <Button size="bench" aria-describedby={wordsId} onPress={() => setAgain(true)}>
              Again
            </Button>
          </span>
        )}
      </span>
      {needsReason && given && (
        <ReasonEntry
          jobId={job.jobId}
          line={line}
          autoFocus={isAnswered}
          onReason={(reason) => answer(given.answer, reason)}
        />
      )}
      <FailureSentence error={write.error} />
    </li>
  );
}

/** On a key of the line one letter answers; in an entry it would be typed, so that it waits for Enter. */
function answerByKey(event: KeyboardEvent, { asks }: LineOfJob, answer: (given: Answer) => void): void {
  if (event.ctrlKey || event.altKey || event.metaKey || event.repeat) return;
  const { target, key } = event;
  const isEmptyNumber =
    target instanceof HTMLInputElement &&
    target.value === '' &&
    target.closest('[data-hand]') !== null &&
    (asks.kind === 'count' || asks.kind === 'stall');
  if (target instanceof HTMLInputElement && !isEmptyNumber) return;
  const option = asks.kind === 'choice' && /^[1-9]$/.test(key) ? asks.options[Number(key) - 1] : undefined;
  if (key === '-') answer(doesNotApply);
  else if (key.toLowerCase() === 'n') answer(notSo);
  else if (option) answer({ kind: 'chosen', option: option.words });
  else return;
  event.preventDefault();
  event.stopPropagation();
}

type TypedAnswerProps = {
  jobId: number;
  line: LineOfJob;
  onAnswer: (given: Answer) => void;
  isPending: boolean;
};

/** The keys say what they answer; what is asked describes them. */
type AnswerKeysProps = TypedAnswerProps & { wordsId: string };

function AnswerKeys({ jobId, line, wordsId, onAnswer, isPending }: AnswerKeysProps) {
  const { asks } = line;
  return (
    <>
      {asks.kind === 'tick' ? (
        <span data-hand>
          <Button size="bench" keyHint="Enter" aria-describedby={wordsId} onPress={() => onAnswer({ kind: 'done' })}>
            Done
          </Button>
        </span>
      ) : asks.kind === 'choice' ? (
        <span data-hand className={styles.options}>
          {asks.options.map((option, index) => (
            <Button
              key={option.words}
              size="bench"
              keyHint={String(index + 1)}
              aria-describedby={wordsId}
              onPress={() => onAnswer({ kind: 'chosen', option: option.words })}
            >
              {option.words}
            </Button>
          ))}
        </span>
      ) : (
        <TypedAnswer jobId={jobId} line={line} onAnswer={onAnswer} isPending={isPending} />
      )}
      <Button size="bench" keyHint="N" aria-describedby={wordsId} onPress={() => onAnswer(notSo)}>
        Not so
      </Button>
      <Button size="bench" keyHint="–" aria-describedby={wordsId} onPress={() => onAnswer(doesNotApply)}>
        Not here
      </Button>
    </>
  );
}

const placeholders = { count: 'count', words: 'typed', change: 'old > new', stall: 'rpm s' } as const;
/** Two figures in one field: how they are told apart has to be said before the first try. */
const hints = {
  count: '',
  words: '',
  change: 'Old, then >, then new: .062 > .086',
  stall: 'Speed, then seconds: 2250 4',
};

function TypedAnswer({ jobId, line, onAnswer, isPending }: TypedAnswerProps) {
  const { lineId, words, asks } = line;
  const typed = useDraft(`answer to line ${lineId} of job ${jobId}`, '');
  const [refusal, setRefusal] = useState<string | null>(null);
  if (asks.kind === 'tick' || asks.kind === 'choice') return null;
  return (
    <span data-hand className={styles.typed}>
      <TextField
        label={words}
        isLabelHidden
        value={typed.value}
        placeholder={placeholders[asks.kind]}
        {...(hints[asks.kind] !== '' && { hint: hints[asks.kind] })}
        maxLength={200}
        refusal={refusal}
        inputMode={asks.kind === 'count' ? 'numeric' : 'text'}
        onChange={(text) => {
          setRefusal(null);
          typed.change(text);
        }}
        onKeyDown={(event) => {
          event.continuePropagation();
          if (event.key !== 'Enter' || event.repeat || isPending) return;
          event.preventDefault();
          const read = parseAnswer(asks, typed.value);
          if (!read.ok) return setRefusal(read.refusal.message);
          typed.clear();
          onAnswer(read.value);
        }}
      />
    </span>
  );
}

/** Why it may stand as it is; put right, it is answered again instead. */
function ReasonEntry({
  jobId,
  line,
  autoFocus,
  onReason,
}: {
  jobId: number;
  line: LineOfJob;
  /** Where it was answered just now; not where it stood off when the page came up. */
  autoFocus: boolean;
  onReason: (reason: string) => void;
}) {
  const reason = useDraft(`why line ${line.lineId} of job ${jobId} stands`, '');
  return (
    <span className={styles.reason}>
      <TextField
        label={`Why ${line.words} stands as it is`}
        hint="Enter keeps it; or put it right and answer again."
        autoFocus={autoFocus}
        value={reason.value}
        onChange={reason.change}
        maxLength={200}
        onKeyDown={(event) => {
          event.continuePropagation();
          if (event.key !== 'Enter' || event.repeat || reason.value.trim() === '') return;
          event.preventDefault();
          reason.clear();
          onReason(reason.value);
        }}
      />
    </span>
  );
}
