// A take against its limits: every spot a dot, the running value above them, what was or will be expected beside it.
import { band } from '../../../app/charts/band.ts';
import type { NamedAmount } from '../../../app/charts/band-axis.ts';
import type { Take } from '../../../app/readings/readings.contract.ts';
import { FittedChart } from '../../charts/FittedChart.tsx';
import { drawnLimits } from '../../text/check-words.ts';
import { useAtCheck } from './at-check.ts';
import { valuesRead } from './reading-plan.ts';

export function ReadingBand({ take, expected }: { take: Take; expected: NamedAmount | null }) {
  const { check, words } = useAtCheck();
  const { limits, target } = drawnLimits(check.limits);
  if (limits.low === null && limits.high === null) return null;
  const { mean, expanded, decisionRule } = take.evaluation;
  const facts = {
    limits,
    target,
    guard: decisionRule === 'guarded' ? expanded : null,
    readings: valuesRead(take).map(({ value }) => value),
    now: mean === null ? null : { value: mean, expanded, label: 'now' },
    predicted: expected,
    asFound: null,
  };
  return <FittedChart draw={(width) => band(facts, words, { width, medium: 'screen' })} />;
}
