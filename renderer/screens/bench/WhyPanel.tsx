// Behind a verdict: each line of the budget with its share, the factor, the chance, and the limits it is held against.

import type { ReactNode } from 'react';
import { chanceWords } from '../../../app/packs/chance-words.ts';
import type { Evaluation } from '../../../app/readings/readings.contract.ts';
import { BudgetTable } from '../../components/BudgetTable.tsx';
import { useAtCheck } from './at-check.ts';
import styles from './WhyPanel.module.css';

export function WhyPanel({ evaluation }: { evaluation: Evaluation }) {
  const { words } = useAtCheck();
  const { budget, coverageFactor, effectiveDegreesOfFreedom, expanded, verdict } = evaluation;
  const { acceptance, whatWouldDecide } = evaluation;
  return (
    <section className={styles.why} aria-labelledby="why">
      <h2 id="why">
        <b>Why</b>
      </h2>
      {budget.length === 0 ? (
        <p>Repeatability unknown: the plain number, judged without a guard.</p>
      ) : (
        <BudgetTable
          label="What the ± is made of"
          heads={['one standard uncertainty', words.unit]}
          of={evaluation}
          write={words.full}
        />
      )}
      <dl className={styles.facts}>
        {coverageFactor !== null && expanded !== null && (
          <Fact name="The ±, 95 of 100">
            {words.full(expanded)}, k = {coverageFactor.toFixed(2)}
            {effectiveDegreesOfFreedom !== null && `, ${Math.round(effectiveDegreesOfFreedom)} degrees of freedom`}
          </Fact>
        )}
        {verdict.probabilityConforming !== null && (
          <Fact name="Chance that it conforms">{chanceWords(verdict.probabilityConforming)}</Fact>
        )}
        <Fact name="The shop’s rule">
          {evaluation.decisionRule === 'guarded'
            ? 'guarded: in only when inside the limits by more than the ±'
            : 'simple: inside the limits is in'}
        </Fact>
        <Fact name="Called in">{acceptedWithin(acceptance, words.full)}</Fact>
        {whatWouldDecide !== null && <Fact name="What would decide it">{whatWouldDecide}</Fact>}
      </dl>
    </section>
  );
}

function Fact({ name, children }: { name: string; children: ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}

function acceptedWithin(acceptance: Evaluation['acceptance'], write: (amount: number) => string): string {
  if (!acceptance) return 'nowhere: the band is too narrow for this method';
  const { lower, upper } = acceptance;
  if (lower !== null && upper !== null) return `from ${write(lower)} to ${write(upper)}`;
  if (lower !== null) return `from ${write(lower)} up`;
  return upper === null ? 'anywhere' : `up to ${write(upper)}`;
}
