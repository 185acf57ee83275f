// Which gauge reads what comes next: chosen once, kept as last time, with a word of warning about a doubtful one.
import { useState } from 'react';
import { fits } from '../../../app/gauges/gauge-kinds.ts';
import { standingWarning } from '../../../app/gauges/gauge-standing.ts';
import type { Gauge } from '../../../app/gauges/register.contract.ts';
import type { ReadingMethod } from '../../../app/specs/spec-sheet.ts';
import { Notice } from '../../components/Notice.tsx';
import { Select } from '../../components/Select.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { useAtCheck } from './at-check.ts';
import styles from './GaugeChoice.module.css';

type Choice = {
  /** null: none is named. */
  readonly gaugeId: number | null;
  readonly fitting: readonly Gauge[];
  readonly choose: (gaugeId: number | null) => void;
};

/** Starts at the gauge that read this way last on this job. */
export function useGaugeChoice(method: ReadingMethod): Choice {
  const { job, check } = useAtCheck();
  const gauges = useRead('gauges.listGauges', {});
  const last = useRead('gauges.lastGauge', { jobId: job.jobId, method });
  const [chosen, choose] = useState<number | null | undefined>(undefined);
  const fitting = (gauges.data ?? []).filter((each) => !each.isRetired && fits(each.kind, method, check.quantity));
  const wanted = chosen === undefined ? last.data?.gaugeId : chosen;
  return { gaugeId: fitting.find(({ gaugeId }) => gaugeId === wanted)?.gaugeId ?? null, fitting, choose };
}

const none = 0;

/** Nothing where the register holds no gauge that fits. */
export function GaugeChoice({ choice }: { choice: Choice }) {
  const { gaugeId, fitting, choose } = choice;
  if (fitting.length === 0) return null;
  const gauge = fitting.find((each) => each.gaugeId === gaugeId);
  const warning = gauge ? standingWarning(gauge.tag, gauge.standing) : null;
  return (
    <div className={styles.choice}>
      <Select
        label="Read with"
        options={[
          { id: none, words: 'no gauge named' },
          ...fitting.map((each) => ({ id: each.gaugeId, words: each.tag })),
        ]}
        value={gaugeId ?? none}
        onChange={(id) => choose(id === none ? null : id)}
      />
      {warning && <Notice>{warning}</Notice>}
    </div>
  );
}
