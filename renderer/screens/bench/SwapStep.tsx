// One swap to be done: what comes out, what goes in, what it should then read, drawn before and after.

import { chanceWords } from '../../../app/packs/chance-words.ts';
import type { SwapOption } from '../../../app/packs/packs.contract.ts';
import { formatLength } from '../../../app/quantities/format-amount.ts';
import { ReadingWithUncertainty } from '../../components/ReadingWithUncertainty.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { AroundDrum } from './AroundDrum.tsx';
import { useAtCheck, usePack } from './at-check.ts';
import type { Go } from './bench-step.ts';
import { CheckPage } from './CheckPage.tsx';
import { ReadingBand } from './ReadingBand.tsx';
import result from './ResultStep.module.css';
import { RunningReading } from './RunningReading.tsx';
import { SpotsAcross } from './SpotsAcross.tsx';
import { SwapDrawing } from './SwapDrawing.tsx';
import styles from './SwapStep.module.css';
import { slotChanges, swapLines, swapOrder } from './swap-words.ts';
import { useRebuild } from './use-rebuild.ts';

export function SwapStep({ changes, go }: { changes: number; go: Go }) {
  const { job } = useAtCheck();
  const pack = usePack();
  const plan = useRead('packs.planSwaps', { jobId: job.jobId, packId: pack.packId });
  return (
    <Loaded read={plan}>
      {({ options }) => {
        const option = options.find((each) => each.changes === changes);
        return option ? <Swap option={option} go={go} /> : null;
      }}
    </Loaded>
  );
}

function Swap({ option, go }: { option: SwapOption; go: Go }) {
  const { check, takes, settings } = useAtCheck();
  const rebuild = useRebuild(go);
  const write = (length_nm: number) => formatLength(length_nm, settings.lengthUnit, undefined, settings.decimalMark);
  const take = takes.findLast((each) => each.evaluation.mean !== null && each.method === check.method);
  const pieces = [
    ...option.in.map(({ slotId, from }) => ({ slotId, from })),
    ...option.moved.map(({ toSlotId, pieceId }) => ({ slotId: toSlotId, from: { pieceId } })),
  ];
  const swapped = () => rebuild.record(pieces, swapLines(option, write).join('; ').slice(0, 200));
  return (
    <CheckPage
      phase={null}
      prompt={
        <>
          <h1 className="say">{swapOrder(option)}</h1>
          <SwapFigures option={option} write={write} />
          {option.moved.map((move) => (
            <p key={move.sentence}>{move.sentence}</p>
          ))}
        </>
      }
      keys={[
        { key: 'Enter', words: 'Swapped, ring on', isFilled: true, onPress: swapped },
        { key: 'S', words: 'Other swaps', onPress: () => go({ at: 'swaps' }) },
        { key: 'B', words: 'Back to the reading', onPress: () => go({ at: 'result' }) },
        { key: 'K', words: 'Keep as is', isRare: true, onPress: () => go({ at: 'keep' }) },
      ]}
      aside={<SwapDrawing option={option} />}
    >
      <FailureSentence error={rebuild.error} />
      {take && (
        <div className={result.so}>
          <section className={result.is}>
            <h2>Clearance as it is</h2>
            <RunningReading evaluation={take.evaluation} expected={null} tells="figure" />
            <ReadingBand
              take={take}
              expected={{ value: option.predicted_nm, expanded: option.expanded_nm, label: 'after the swap' }}
            />
            <div className={`${result.reads} ${styles.wide}`}>
              <SpotsAcross take={take} />
            </div>
          </section>
          {check.spots > 1 && take.evaluation.spots.length > 1 && (
            <div className={styles.wide}>
              <AroundDrum take={take} />
            </div>
          )}
        </div>
      )}
    </CheckPage>
  );
}

/** One plate for one is read across the bench; several stand slot by slot. */
function SwapFigures({ option, write }: { option: SwapOption; write: (length_nm: number) => string }) {
  const changes = slotChanges(option);
  const [only, ...more] = changes;
  const size: Plate['size'] = more.length === 0 ? 'read' : 'say';
  return (
    <dl className={styles.figures}>
      {only?.out && only.in && more.length === 0 ? (
        <>
          <Figure name="out" plates={[{ ...only.out, size }]} write={write} />
          <Figure name="in" plates={[{ ...only.in, size, isAct: true }]} write={write} />
        </>
      ) : (
        changes.map((change) => (
          <Figure
            key={change.slotId}
            name={change.slotName}
            plates={[
              ...(change.out ? [{ ...change.out, size, isOut: true }] : []),
              ...(change.in ? [{ ...change.in, size, isAct: true }] : []),
            ]}
            write={write}
          />
        ))
      )}
      <div>
        <dt>then it should read</dt>
        <dd>
          <ReadingWithUncertainty value={write(option.predicted_nm)} plusMinus={write(option.expanded_nm)} />
        </dd>
        {option.probabilityInBand !== null && (
          <dd className={styles.note}>in the band: {chanceWords(option.probabilityInBand)}</dd>
        )}
      </div>
    </dl>
  );
}

type Plate = { height_nm: number; label: string; size: 'read' | 'say'; isOut?: boolean; isAct?: boolean };

function Figure({
  name,
  plates,
  write,
}: {
  name: string;
  plates: readonly Plate[];
  write: (length_nm: number) => string;
}) {
  return (
    <div>
      <dt>{name}</dt>
      {plates.map(({ height_nm, label, size, isOut, isAct }) => (
        <dd key={label || height_nm} className={isAct ? styles.act : undefined}>
          <span className={size}>{write(height_nm)}</span>
          <span className={size === 'read' ? styles.under : styles.beside}>
            <span className="mono">{label}</span>
            {plates.length > 1 && (isOut ? ' out' : ' in')}
          </span>
        </dd>
      ))}
    </div>
  );
}
