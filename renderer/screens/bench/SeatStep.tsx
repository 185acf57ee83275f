// Air on and off twice, hand off: the caution stands where the hand is.

import { Notice } from '../../components/Notice.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useAtCheck } from './at-check.ts';
import { type Go, goOn } from './bench-step.ts';
import { CheckPage } from './CheckPage.tsx';
import { useReadingActs } from './reading-acts.ts';
import type { ReadingPlan } from './reading-plan.ts';
import { standsWords } from './setup-words.ts';
import { useBeside } from './use-beside.tsx';

export function SeatStep({ plan, go }: { plan: ReadingPlan; go: Go }) {
  const beside = useBeside();
  const { check } = useAtCheck();
  const acts = useReadingActs();
  return (
    <CheckPage
      phase={plan.phase}
      stands={standsWords(check, plan.method, plan.setup)}
      prompt={
        <h1 className="say">
          <b>Hand off.</b>
          <br />
          Air on and off twice to seat it.
        </h1>
      }
      keys={[
        { key: 'Enter', words: 'Seated', isFilled: true, onPress: () => acts.startThen(plan, () => go(goOn)) },
        { key: 'B', words: 'Back', onPress: () => go({ at: 'ring', plan }) },
      ]}
      aside={beside}
    >
      <Notice kind="caution">
        40 psi on 12 square inches closes with about 500 pounds. Air a touch first, then full. No face or hand above,
        ring aimed away, never on skin; eyes and ears protected. The maker’s manual comes first.
      </Notice>
      <FailureSentence error={acts.error} />
    </CheckPage>
  );
}
