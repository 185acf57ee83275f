// A take was left half read: whether it can be gone on with is for the person who knows the drum.
import { Notice } from '../../components/Notice.tsx';
import { useAtCheck } from './at-check.ts';
import { begin, type Go, goOn } from './bench-step.ts';
import { CheckPage } from './CheckPage.tsx';
import { ReadsTable } from './ReadsTable.tsx';
import { draftOfSpot, phaseWords, planOf, spotName, spotToRead } from './reading-plan.ts';
import { standsWords } from './setup-words.ts';
import { useBenchDraft } from './use-bench-draft.ts';
import { useBeside } from './use-beside.tsx';

export function ResumeStep({ go }: { go: Go }) {
  const at = useAtCheck();
  const take = at.takes.at(-1) ?? null;
  const beside = useBeside(take);
  const spot = take ? (spotToRead(take, at.check, null) ?? 1) : 1;
  const draft = useBenchDraft(draftOfSpot(take, at, spot), '');
  if (!take) return null;
  return (
    <CheckPage
      phase={phaseWords(take)}
      stands={standsWords(at.check, take.method, take.setup)}
      prompt={
        <>
          <h1 className="say">Did the drum move since?</h1>
          <p>
            It was left at spot {spot}, {spotName(spot, at.check.spots)}.
          </p>
        </>
      }
      keys={[
        { key: 'Enter', words: 'No, go on', isFilled: true, onPress: () => go(goOn) },
        {
          key: 'P',
          words: 'Yes, start over',
          onPress: () => go(take.setup ? { at: 'ring', plan: planOf(take) } : begin(at)),
        },
      ]}
      aside={beside}
    >
      {draft.value !== '' && (
        <Notice>
          Typed and not entered yet: <b className="mono">{draft.value}</b>. It is kept.
        </Notice>
      )}
      <ReadsTable take={take} />
    </CheckPage>
  );
}
