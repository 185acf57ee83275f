// A take against its limits: every spot a dot, the running value above them, what was or will be expected beside it.
import { band } from '../../../app/charts/band.ts';
import type { NamedAmount } from '../../../app/charts/band-axis.ts';
import type { Evaluation } from '../../../app/readings/readings.contract.ts';
import { FittedChart } from '../../charts/FittedChart.tsx';
import { useAtCheck } from './at-check.ts';
import { drawnLimits } from './check-facts.ts';

export function ReadingBand({ evaluation, expected }: { evaluation: Evaluation | null; expected: NamedAmount | null }) {
  const { check, settings, words } = useAtCheck();
  const { limits, target } = drawnLimits(check.limits);
  if (limits.low === null && limits.high === null) return null;
  const mean = evaluation?.mean ?? null;
  const facts = {
    limits,
    target,
    guard: settings.decisionRule === 'guarded' ? (evaluation?.expanded ?? null) : null,
    readings: evaluation?.spots.map((spot) => spot.value) ?? [],
    now: mean === null ? null : { value: mean, expanded: evaluation?.expanded ?? null, label: 'now' },
    predicted: expected,
    asFound: null,
  };
  return <FittedChart draw={(width) => band(facts, words, { width, medium: 'screen' })} />;
}
