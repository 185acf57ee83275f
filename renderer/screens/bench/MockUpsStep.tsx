// The mock-ups of a pack beside each other, read from the bench.
import { MockUps } from '../../packs/MockUps.tsx';
import { useAtCheck, usePack } from './at-check.ts';
import type { Go, Step } from './bench-step.ts';
import { CheckPage } from './CheckPage.tsx';
import { newestSentence } from './result-words.ts';
import { Suspects } from './Suspects.tsx';
import { useBeside } from './use-beside.tsx';

export function MockUpsStep({ back, go }: { back: Step; go: Go }) {
  const { check, words } = useAtCheck();
  const pack = usePack();
  const beside = useBeside();
  const missed = pack.mockUps.filter(({ suspects }) => suspects.length > 0);
  return (
    <CheckPage
      phase={null}
      prompt={<h1 className="say">{newestSentence(pack, check, words)}</h1>}
      keys={[{ key: 'Enter', words: 'Back', isFilled: true, onPress: () => go(back) }]}
      aside={beside}
    >
      <MockUps pack={pack} check={check} size="bench" />
      {missed.map(({ mockUpId, number, suspects }) => (
        <Suspects key={mockUpId} suspects={suspects}>
          Mock-up {number} read farther from its prediction than the uncertainty allows.
        </Suspects>
      ))}
    </CheckPage>
  );
}
