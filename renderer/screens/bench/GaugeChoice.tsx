// Which gauge reads what comes next: chosen once, kept as last time, with a word of warning about a doubtful one.
import { useState } from 'react';
import { fits } from '../../../app/gauges/gauge-kinds.ts';
import { standingWarning } from '../../../app/gauges/gauge-standing.ts';
import type { Gauge } from '../../../app/gauges/register.contract.ts';
import type { ReadingMethod } from '../../../app/specs/spec-sheet.ts';
import { readLabelCode } from '../../../app/stock/label-code.ts';
import { Notice } from '../../components/Notice.tsx';
import { Select } from '../../components/Select.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { useAtCheck } from './at-check.ts';
import styles from './GaugeChoice.module.css';
import { useBenchGauge } from './use-bench-gauge.ts';

type Choice = {
  /** null: none is named. */
  readonly gaugeId: number | null;
  readonly fitting: readonly Gauge[];
  readonly choose: (gaugeId: number | null) => void;
};

/** Starts at the gauge of the line this bench reads, else at the one that read this way last on this job. */
export function useGaugeChoice(method: ReadingMethod): Choice {
  const { job, check } = useAtCheck();
  const gauges = useRead('gauges.listGauges', {});
  const last = useRead('gauges.lastGauge', { jobId: job.jobId, method });
  const line = useBenchGauge();
  const [chosen, choose] = useState<number | null | undefined>(undefined);
  const fitting = (gauges.data ?? []).filter((each) => !each.isRetired && fits(each.kind, method, check.quantity));
  const known = (wanted: number | null | undefined) =>
    fitting.find(({ gaugeId }) => gaugeId === wanted)?.gaugeId ?? null;
  const usual = known(line?.gaugeId) ?? known(last.data?.gaugeId);
  return { gaugeId: chosen === undefined ? usual : known(chosen), fitting, choose };
}

const none = 0;

/** Nothing where the register holds no gauge that fits. `scans` adds an entry for the label that stands on it. */
export function GaugeChoice({ choice, scans = false }: { choice: Choice; scans?: boolean }) {
  const { gaugeId, fitting, choose } = choice;
  if (fitting.length === 0) return null;
  const gauge = fitting.find((each) => each.gaugeId === gaugeId);
  const warning = gauge ? standingWarning(gauge.tag, gauge.standing) : null;
  return (
    <div className={styles.choice}>
      <Select
        label="Read with"
        size="bench"
        options={[
          { id: none, words: 'no gauge named' },
          ...fitting.map((each) => ({ id: each.gaugeId, words: each.tag })),
        ]}
        value={gaugeId ?? none}
        onChange={(id) => choose(id === none ? null : id)}
      />
      {scans && <ScanEntry choice={choice} />}
      {warning && (
        <div className={styles.warning}>
          <Notice>{warning}</Notice>
        </div>
      )}
    </div>
  );
}

/** What is to be known about the gauge that reads, where it was not said above already. */
export function GaugeWarning({ gaugeId }: { gaugeId: number }) {
  const gauge = useRead('gauges.listGauges', {}).data?.find((each) => each.gaugeId === gaugeId);
  const warning = gauge ? standingWarning(gauge.tag, gauge.standing) : null;
  return warning && <Notice>{warning}</Notice>;
}

/** A scanner types the code and presses Enter; a hand may do the same. */
function ScanEntry({ choice: { fitting, choose } }: { choice: Choice }) {
  const [typed, setTyped] = useState('');
  const [refusal, refuse] = useState<string | null>(null);
  const scanned = () => {
    if (typed.trim() === '') return;
    const code = readLabelCode(typed);
    const gauge = code?.kind === 'gauge' ? fitting.find(({ gaugeId }) => gaugeId === code.gaugeId) : undefined;
    if (gauge) choose(gauge.gaugeId);
    setTyped(gauge ? '' : typed);
    refuse(
      gauge ? null : code?.kind === 'gauge' ? 'That gauge does not read this check.' : 'That is no gauge’s label.',
    );
  };
  return (
    <TextField
      label="or scan its label"
      size="bench"
      value={typed}
      onChange={(text) => {
        setTyped(text);
        refuse(null);
      }}
      onKeyDown={({ key }) => key === 'Enter' && scanned()}
      refusal={refusal}
    />
  );
}
