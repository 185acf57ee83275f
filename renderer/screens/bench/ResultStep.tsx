// The check is read: the sentence, the figures it stands on, and what to do about it.
import { useNavigate } from '@tanstack/react-router';
import type { BenchKey } from '../../components/KeyBar.tsx';
import { Notice } from '../../components/Notice.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { AroundDrum } from './AroundDrum.tsx';
import { useAtCheck } from './at-check.ts';
import { begin, type Go, goOn } from './bench-step.ts';
import { CheckPage } from './CheckPage.tsx';
import { FeelerBesideAir } from './FeelerBesideAir.tsx';
import { keysWhen } from './keys-when.ts';
import { ReadingBand } from './ReadingBand.tsx';
import styles from './ResultStep.module.css';
import { RunningReading } from './RunningReading.tsx';
import { useReadingActs } from './reading-acts.ts';
import { expectedOf, phaseWords, planOf, roundsRead, standingReadings } from './reading-plan.ts';
import { expectedSentence, nextAct, resultSentence } from './result-words.ts';
import { SpotsAcross } from './SpotsAcross.tsx';
import { Suspects } from './Suspects.tsx';
import { standsWords } from './setup-words.ts';
import { useBeside } from './use-beside.tsx';
import { useWhy } from './use-why.ts';
import { WhyPanel } from './WhyPanel.tsx';

export function ResultStep({ go }: { go: Go }) {
  const at = useAtCheck();
  const { check, pack, job, takes } = at;
  const navigate = useNavigate();
  const acts = useReadingActs();
  const why = useWhy();
  const take = takes.at(-1) ?? null;
  const beside = useBeside(take);
  if (!take) return null;
  const { evaluation, setup } = take;
  const last = standingReadings(take).at(-1);
  const mockUp = pack?.mockUps.find((each) => each.number === take.mockUpNumber);
  const expected = expectedOf(take, at);
  const suspects = expected === null ? [] : (mockUp?.suspects ?? []);
  const act = nextAct(take, at);

  const washer = () => go({ at: 'washer' });
  const keep = () => void navigate({ to: '/bench', search: { unit: job.jobId } });
  const swap = () => go(mockUp || pack?.mockUps.length ? { at: 'swaps' } : { at: 'contents' });
  const more = () => go({ at: 'read', plan: null, rounds: roundsRead(take, check) + 1 });
  const again = () => go(begin(at));
  const final = () => acts.startThen({ ...planOf(take), phase: 'final', mode: 'final', note: '' }, () => go(goOn));
  const does = {
    'keep it': { words: 'Keep it', onPress: keep },
    'read it final': { words: 'Read it final', onPress: final },
    'what to swap': { words: 'What to swap', onPress: swap },
    'fit a washer': { words: 'Which washer', onPress: washer },
    'measure more': { words: 'Measure more', onPress: more },
    'read it again': { words: 'Read it again', onPress: again },
  }[act];
  const redo = () => last && go({ at: 'redo', readingId: last.readingId, back: { at: 'result' } });
  const keys: BenchKey[] = [
    { key: 'Enter', isFilled: true, ...does },
    ...keysWhen(pack !== null && act !== 'what to swap', { key: 'S', words: 'What to swap', onPress: swap }),
    ...keysWhen(check.shims_nm.length > 0 && act !== 'fit a washer', {
      key: 'W',
      words: 'Which washer',
      onPress: washer,
    }),
    ...keysWhen(last !== undefined && act !== 'measure more', { key: 'M', words: 'Measure more', onPress: more }),
    ...keysWhen(last !== undefined, { key: 'R', words: 'Redo', onPress: redo }),
    ...keysWhen(act !== 'read it again', { key: 'N', words: 'Read it again', isRare: true, onPress: again }),
    ...keysWhen(act !== 'keep it', { key: 'K', words: 'Keep as is', isRare: true, onPress: () => go({ at: 'keep' }) }),
    ...keysWhen(pack !== null && pack.mockUps.length > 1, {
      key: 'V',
      words: 'Mock-ups',
      isRare: 'always',
      onPress: () => go({ at: 'mock-ups', back: { at: 'result' } }),
    }),
    ...keysWhen(pack !== null && pack.mockUps.length > 0, {
      key: 'H',
      words: 'Correct a height',
      isRare: 'always',
      onPress: () => go({ at: 'correct', of: 'pack', back: { at: 'result' } }),
    }),
    { key: '?', words: 'Why', onPress: why.turn },
  ];

  return (
    <CheckPage
      phase={phaseWords(take)}
      stands={standsWords(check, take.method, setup)}
      prompt={
        <>
          <h1 className="say">{resultSentence(take, at)}</h1>
          {/* Where to look stands in its place; the keys are at the foot in any case. */}
          {suspects.length === 0 && <p className="quiet">{keysSentence(keys)}</p>}
          <Expected sentence={expectedSentence(take, at)} suspects={suspects} />
          {check.override && <p>It stands: {check.override.reason}</p>}
        </>
      }
      keys={keys}
      aside={why.isOpen ? <WhyPanel evaluation={evaluation} /> : beside}
    >
      <FailureSentence error={acts.error} />
      <div className={styles.so}>
        <section className={styles.is}>
          <h2>{headOf(take.evaluation.spots.length, check.packId !== null)}</h2>
          <RunningReading evaluation={evaluation} expected={null} />
          {evaluation.whatWouldDecide !== null && <Notice>{evaluation.whatWouldDecide}</Notice>}
          <ReadingBand
            take={take}
            expected={expected && { value: expected.mean_nm, expanded: expected.expanded_nm, label: 'predicted' }}
          />
          <div className={styles.reads}>
            <FeelerBesideAir take={take} />
          </div>
          {(check.packId !== null || standingReadings(take).length > 1) && (
            <div className={styles.reads}>
              <SpotsAcross take={take} />
            </div>
          )}
          <Afterwards />
        </section>
        {check.spots > 1 && evaluation.spots.length > 1 && <AroundDrum take={take} />}
      </div>
    </CheckPage>
  );
}

/** "Enter: keep it. S: what to swap. M: measure more." */
function keysSentence(keys: readonly BenchKey[]): string {
  return keys
    .slice(0, 3)
    .map(({ key, words }) => `${key}: ${words.charAt(0).toLowerCase()}${words.slice(1)}.`)
    .join(' ');
}

function headOf(spots: number, isPack: boolean): string {
  const what = isPack ? 'Clearance as it is' : 'As it reads';
  return spots > 1 ? `${what}, ${spots} spots` : what;
}

/** What the plates had said before, and where to look when the reading is far from it. */
function Expected({ sentence, suspects }: { sentence: string | null; suspects: readonly string[] }) {
  if (sentence === null) return null;
  if (suspects.length === 0) return <p className="quiet">{sentence}</p>;
  return <Suspects suspects={suspects}>{sentence} That is farther off than the uncertainty allows.</Suspects>;
}

/** Misread lines and notes of this take. */
function Afterwards() {
  const { takes } = useAtCheck();
  const take = takes.at(-1);
  const misread = take?.readings.filter((reading) => reading.supersededById !== null) ?? [];
  const lines = [
    ...misread.map(
      (reading) => `“${reading.typed}” was replaced: ${replacedBecause(reading.readingId, take?.readings ?? [])}.`,
    ),
    ...(take?.notes.filter(({ what }) => what !== 'enough').map(({ spot, what }) => `Spot ${spot}: ${what}.`) ?? []),
  ];
  return lines.map((line) => (
    <p key={line} className="small quiet">
      {line}
    </p>
  ));
}

function replacedBecause(
  readingId: number,
  readings: readonly { supersedesId: number | null; reason: string }[],
): string {
  return readings.find((each) => each.supersedesId === readingId)?.reason ?? 'misread';
}
