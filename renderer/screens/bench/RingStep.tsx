// Before air goes in: ring, plates and last friction, one Enter for all.
import { useAtCheck } from './at-check.ts';
import type { Go } from './bench-step.ts';
import { CheckPage } from './CheckPage.tsx';
import type { ReadingPlan } from './reading-plan.ts';
import { standsWords } from './setup-words.ts';
import { useBeside } from './use-beside.tsx';

export function RingStep({ plan, go }: { plan: ReadingPlan; go: Go }) {
  const beside = useBeside();
  const { pack, check } = useAtCheck();
  const count = (kind: string) => pack?.slots.filter((slot) => slot.kind === kind).length ?? 0;
  // As found nothing came apart yet, so nobody can have counted.
  const isCounted = pack !== null && plan.phase !== 'as found';
  return (
    <CheckPage
      phase={plan.phase}
      stands={standsWords(check, plan.method, plan.setup)}
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
      aside={beside}
    />
  );
}
