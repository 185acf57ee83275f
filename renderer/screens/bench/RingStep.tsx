// Before air goes in: ring, plates and last friction, one Enter for all.
import { useAtCheck } from './at-check.ts';
import type { Go } from './bench-step.ts';
import { CheckPage } from './CheckPage.tsx';
import { PackNow } from './PackNow.tsx';
import type { ReadingPlan } from './reading-plan.ts';
import { setupWords } from './setup-words.ts';

export function RingStep({ plan, go }: { plan: ReadingPlan; go: Go }) {
  const { pack } = useAtCheck();
  const count = (kind: string) => pack?.slots.filter((slot) => slot.kind === kind).length ?? 0;
  // As found nothing came apart yet, so nobody can have counted.
  const isCounted = pack !== null && plan.phase !== 'as found';
  return (
    <CheckPage
      phase={plan.phase}
      {...(plan.setup && { stands: setupWords(plan.setup) })}
      prompt={
        <h1 className="say">
          Ring seated all round?
          {isCounted && (
            <>
              <br />
              Plates counted {count('friction')} + {count('steel')}?
            </>
          )}
          <br />
          Last friction down?
        </h1>
      }
      keys={[
        { key: 'Enter', words: 'Yes, all of it', isFilled: true, onPress: () => go({ at: 'seat', plan }) },
        { key: 'B', words: 'Back to the setup', onPress: () => go({ at: 'set up' }) },
      ]}
      aside={<PackNow />}
    />
  );
}
