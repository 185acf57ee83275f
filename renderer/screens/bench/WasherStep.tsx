// End play in the bench's own terms: the washer that is in, what it read, the washer that brings it to the target.
import { useState } from 'react';
import { formatLength } from '../../../app/quantities/format-amount.ts';
import { EntryLine } from '../../components/EntryLine.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { useAtCheck } from './at-check.ts';
import type { Go } from './bench-step.ts';
import { CheckPage } from './CheckPage.tsx';
import { EarlierTakes } from './EarlierTakes.tsx';
import { firstPlan } from './reading-plan.ts';
import { useBenchDraft } from './use-bench-draft.ts';
import styles from './WasherStep.module.css';

export function WasherStep({ go }: { go: Go }) {
  const at = useAtCheck();
  const { job, check, settings, words } = at;
  const washer = useBenchDraft(`washer that is in, check ${check.checkId}, job ${job.jobId}`, '');
  const [asked, ask] = useState<string | null>(null);
  const plan = useRead(
    'packs.planShim',
    asked === null ? null : { jobId: job.jobId, checkId: check.checkId, shimIn: asked },
  );
  const write = (length_nm: number) => formatLength(length_nm, settings.lengthUnit, undefined, settings.decimalMark);
  const best = plan.data?.options[0];
  const fitted = () => {
    if (!best) return;
    washer.clear();
    go({ at: 'read', plan: { ...firstPlan(at), phase: 'final', note: `washer ${write(best.shim_nm)}` }, rounds: null });
  };
  const type = (text: string) => {
    ask(null);
    washer.change(text);
  };
  return (
    <CheckPage
      phase={null}
      prompt={<h1 className="say">{plan.data?.sentence ?? 'Which washer is in?'}</h1>}
      keys={[
        best
          ? { key: 'Enter', words: 'Fitted: read it again', isFilled: true, onPress: fitted }
          : { key: 'Enter', words: 'Find the washer', isFilled: true, onPress: () => ask(washer.value) },
        { key: 'B', words: 'Back', onPress: () => go({ at: 'result' }) },
      ]}
      aside={<EarlierTakes takes={at.takes} />}
    >
      {!best && (
        <EntryLine
          label={`thickness of the washer that is in, ${settings.lengthUnit}`}
          value={washer.value}
          onChange={type}
          onCommit={ask}
          refusal={plan.error?.message ?? null}
        />
      )}
      {plan.data && (
        <div className={styles.washers}>
          <Table label="Washers and what they would read">
            <thead>
              <tr>
                <ColumnHead>washer</ColumnHead>
                <ColumnHead isNumber>end play</ColumnHead>
                <ColumnHead isNumber>from the target</ColumnHead>
              </tr>
            </thead>
            <tbody>
              {plan.data.options.map((option, index) => (
                <tr key={option.shim_nm}>
                  <RowHead isStrong={index === 0}>
                    {write(option.shim_nm)}
                    {index === 0 && ', fit this one'}
                  </RowHead>
                  <Cell isNumber isStrong={index === 0}>
                    {words.full(option.endPlay_nm)}
                  </Cell>
                  <Cell isNumber>{option.deviation_nm === null ? '' : words.full(option.deviation_nm)}</Cell>
                </tr>
              ))}
            </tbody>
          </Table>
        </div>
      )}
    </CheckPage>
  );
}
