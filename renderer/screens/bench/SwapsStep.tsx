// For every number of changes, what leaves, what comes and what it should then read: the advised one first at hand.

import { chanceWords } from '../../../app/packs/chance-words.ts';
import type { SwapOption } from '../../../app/packs/packs.contract.ts';
import { formatLength } from '../../../app/quantities/format-amount.ts';
import { Button } from '../../components/Button.tsx';
import type { BenchKey } from '../../components/KeyBar.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { useAtCheck, usePack } from './at-check.ts';
import { begin, type Go } from './bench-step.ts';
import { CheckPage } from './CheckPage.tsx';
import { keysWhen } from './keys-when.ts';
import { SwapDrawing } from './SwapDrawing.tsx';
import styles from './SwapsStep.module.css';
import { type SlotChange, slotChanges } from './swap-words.ts';
import { useBeside } from './use-beside.tsx';
import { useHandKeys } from './use-hand-keys.ts';

export function SwapsStep({ go }: { go: Go }) {
  const beside = useBeside();
  const at = useAtCheck();
  const { job, settings, words } = at;
  const pack = usePack();
  const plan = useRead('packs.planSwaps', { jobId: job.jobId, packId: pack.packId });
  const options = plan.data?.options ?? [];
  const advised = options.find((option) => option.changes === plan.data?.adviseChanges) ?? null;
  const take = (option: SwapOption) => go({ at: 'swap', changes: option.changes });
  const swaps = options.filter((option) => option.changes > 0);
  useHandKeys(swaps.map((option) => ({ key: String(option.changes), onPress: () => take(option) })));
  const isIn = at.takes.at(-1)?.evaluation.verdict.word === 'in';
  const write = (length_nm: number) => formatLength(length_nm, settings.lengthUnit, undefined, settings.decimalMark);
  const filled: BenchKey = plan.error
    ? { key: 'Enter', words: 'Read it', isFilled: true, onPress: () => go(begin(at)) }
    : advised && advised.changes > 0
      ? {
          key: 'Enter',
          words: advised.changes === 1 ? 'The one swap' : `The ${advised.changes} swaps`,
          isFilled: true,
          onPress: () => take(advised),
        }
      : isIn
        ? { key: 'Enter', words: 'Leave it so', isFilled: true, onPress: () => go({ at: 'result' }) }
        : { key: 'Enter', words: 'Keep as is', isFilled: true, onPress: () => go({ at: 'keep' }) };
  return (
    <CheckPage
      phase={null}
      prompt={
        <>
          <h1 className="say">{plan.data?.advice ?? (plan.error ? plan.error.message : 'Working it out…')}</h1>
          {plan.data?.buy && <p>{plan.data.buy}</p>}
        </>
      }
      keys={[
        filled,
        { key: 'O', words: 'Your own swap', onPress: () => go({ at: 'own swap' }) },
        { key: 'L', words: 'Loose plates', onPress: () => go({ at: 'loose' }) },
        { key: 'B', words: 'Back to the reading', onPress: () => go({ at: 'result' }) },
        ...keysWhen(pack.mockUps.length > 1, {
          key: 'V',
          words: 'Mock-ups',
          isRare: 'always',
          onPress: () => go({ at: 'mock-ups', back: { at: 'swaps' } }),
        }),
        {
          key: 'H',
          words: 'Correct a height',
          isRare: 'always',
          onPress: () => go({ at: 'correct', of: 'pack', back: { at: 'swaps' } }),
        },
        ...keysWhen(advised !== null && advised.changes > 0, {
          key: 'K',
          words: 'Keep as is',
          isRare: true,
          onPress: () => go({ at: 'keep' }),
        }),
      ]}
      aside={advised && advised.changes > 0 ? <SwapDrawing option={advised} /> : beside}
    >
      {options.length > 0 && (
        <div className={styles.swaps}>
          <Table label="What each number of changes brings">
            <thead>
              <tr>
                <ColumnHead>swaps</ColumnHead>
                <ColumnHead>what leaves, what comes</ColumnHead>
                <ColumnHead isNumber>should read</ColumnHead>
                <ColumnHead isNumber>in the band</ColumnHead>
              </tr>
            </thead>
            <tbody>
              {options.map((option) => (
                <tr key={option.changes} className={option === advised ? styles.advised : undefined}>
                  <RowHead>
                    <span className={styles.option}>
                      {option.changes === 0 ? (
                        'none'
                      ) : (
                        <Button size="bench" onPress={() => take(option)}>
                          {option.changes === 1 ? '1 swap' : `${option.changes} swaps`}
                        </Button>
                      )}
                    </span>
                  </RowHead>
                  <Cell>
                    {slotChanges(option).map((change) => (
                      <SlotLine key={change.slotId} change={change} write={write} />
                    ))}
                    {option.moved.map((move) => (
                      <span key={move.sentence} className={styles.line}>
                        {move.sentence}
                      </span>
                    ))}
                    <span className={styles.quiet}>{remarkOn(option)}</span>
                  </Cell>
                  <Cell isNumber>
                    <span className={styles.figure}>
                      <b>{words.full(option.predicted_nm)}</b> ±&nbsp;{words.full(option.expanded_nm)}
                    </span>
                  </Cell>
                  <Cell isNumber>
                    <span className={styles.figure}>
                      {option.probabilityInBand === null ? '' : chanceWords(option.probabilityInBand)}
                    </span>
                  </Cell>
                </tr>
              ))}
            </tbody>
          </Table>
        </div>
      )}
      <FailureSentence error={plan.error} />
      {plan.data && <p className="small quiet">{plan.data.basis}</p>}
    </CheckPage>
  );
}

function SlotLine({ change, write }: { change: SlotChange; write: (length_nm: number) => string }) {
  const { slotName, out } = change;
  return (
    <span className={styles.line}>
      {slotName}:{' '}
      {out && (
        <span className={styles.plate}>
          {write(out.height_nm)}
          <span className={styles.tag}> {out.label}</span> out
        </span>
      )}
      {out && change.in && ', '}
      {change.in && (
        <span className={styles.plate}>
          {write(change.in.height_nm)}
          <span className={styles.tag}> {change.in.label}</span> in
        </span>
      )}
    </span>
  );
}

function remarkOn({ changes, isNoBetter, equallyGood }: SwapOption): string {
  if (changes === 0) return 'as it is';
  const remarks = [isNoBetter && 'no better than fewer', equallyGood > 1 && `one of ${equallyGood} equally good sets`];
  return remarks.filter(Boolean).join('; ');
}
