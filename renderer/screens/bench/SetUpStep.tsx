// Before the first line by air: how the dial stands, what the reading is for, quick or final.
import { useState } from 'react';
import { setupLines } from '../../../app/readings/setup-words.ts';
import { useAtCheck } from './at-check.ts';
import type { Go } from './bench-step.ts';
import { CheckPage } from './CheckPage.tsx';
import { EarlierTakes } from './EarlierTakes.tsx';
import { GaugeChoice, useGaugeChoice } from './GaugeChoice.tsx';
import { keysWhen } from './keys-when.ts';
import { firstPlan, type ReadingPlan, spotsOf, wasRead } from './reading-plan.ts';
import styles from './SetUpStep.module.css';
import { SetupCard } from './SetupCard.tsx';
import { usualSetup } from './setup-words.ts';

const nextPhase = { 'as found': 'mock-up', 'mock-up': 'final', final: 'as found' } as const;

export function SetUpStep({ go }: { go: Go }) {
  const at = useAtCheck();
  const { check, lastSetup } = at;
  const [plan, setPlan] = useState(() => firstPlan(at));
  const [isCardOpen, openCard] = useState(lastSetup === null);
  const [isFilling, fill] = useState(false);
  const isByAir = plan.method === 'air';
  const setup = plan.setup ?? lastSetup ?? usualSetup(check.waveState);
  const gauge = useGaugeChoice(plan.method);
  const goOn = () => {
    const { gaugeId } = gauge;
    if (isByAir) go({ at: 'ring', plan: { ...plan, setup, gaugeId } });
    else go({ at: 'read', plan: { ...plan, setup: null, gaugeId }, rounds: null });
  };
  const change = (part: Partial<ReadingPlan>) => setPlan({ ...plan, ...part });
  const fillIn = () => {
    openCard(true);
    fill(true);
  };
  const filled =
    isByAir && lastSetup && !isCardOpen ? 'Same as last time' : isByAir ? 'It stands like this' : 'Read it';
  return (
    <CheckPage
      phase={plan.phase}
      prompt={
        <>
          <h1 className="say">
            {isByAir ? (isCardOpen ? 'How does the dial stand?' : 'Set up as last time?') : 'By feeler.'}
          </h1>
          <p className="quiet">{planSentence(plan, check.spots)}</p>
        </>
      }
      keys={[
        { key: 'Enter', words: filled, isFilled: true, onPress: goOn },
        ...keysWhen(isByAir && !isFilling, {
          key: 'D',
          words: isCardOpen ? 'Fill it in' : 'Set up differently',
          onPress: fillIn,
        }),
        { key: 'F', words: phaseKey(nextPhase[plan.phase]), onPress: () => change({ phase: nextPhase[plan.phase] }) },
        plan.mode === 'quick'
          ? { key: 'Q', words: 'All spots', onPress: () => change({ mode: 'final' }) }
          : { key: 'Q', words: 'Quick', onPress: () => change({ mode: 'quick' }) },
        isByAir
          ? { key: 'L', words: 'By feeler', isRare: true, onPress: () => change({ method: 'feeler' }) }
          : { key: 'L', words: 'By air', isRare: true, onPress: () => change({ method: check.method }) },
      ]}
      aside={wasRead(at.takes) ? <EarlierTakes takes={at.takes} /> : undefined}
    >
      <GaugeChoice choice={gauge} scans />
      {isByAir && isCardOpen && (
        <SetupCard
          key={String(isFilling)}
          isFilling={isFilling}
          setup={setup}
          onChange={(changed) => change({ setup: changed })}
          onFinish={goOn}
        />
      )}
      {isByAir && !isCardOpen && (
        <ul className={styles.card} aria-label="Setup card">
          {setupLines(setup).map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
    </CheckPage>
  );
}

function phaseKey(phase: ReadingPlan['phase']): string {
  return phase === 'as found' ? 'It is as found' : `It is ${phase === 'final' ? 'final' : 'a mock-up'}`;
}

/** "As found, all 4 spots, one line each." */
function planSentence(plan: ReadingPlan, spots: number): string {
  const phase = plan.phase.charAt(0).toUpperCase() + plan.phase.slice(1);
  const all = spotsOf(plan, { spots });
  const reads =
    plan.mode === 'quick' ? 'quick: one spot, two reads' : all === 1 ? 'one spot' : `${all} spots, one line each`;
  return `${phase}, ${reads}.`;
}
