// A swap of one's own choosing: which slot, what goes in; the plain sum says about what it should read.
import { formatLength } from '../../../app/quantities/format-amount.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useAtCheck, usePack } from './at-check.ts';
import type { Go } from './bench-step.ts';
import { CheckPage } from './CheckPage.tsx';
import { keysWhen } from './keys-when.ts';
import { PackDrawing } from './PackDrawing.tsx';
import { stackAfter, stackNow } from './pack-stack.ts';
import { SlotEntry } from './SlotEntry.tsx';
import { useRebuild } from './use-rebuild.ts';
import { useSlotFilling } from './use-slot-filling.ts';

export function OwnSwapStep({ go }: { go: Go }) {
  const { settings } = useAtCheck();
  const pack = usePack();
  const { slots } = pack;
  const rebuild = useRebuild(go);
  const filling = useSlotFilling({
    what: 'own swap',
    isBought: true,
    next: (fillings) => (Object.keys(fillings).length > 0 ? null : (slots.find((slot) => slot.isAdjuster) ?? null)),
  });
  const { chosen, fillings } = filling;
  const write = (length_nm: number) => formatLength(length_nm, settings.lengthUnit, undefined, settings.decimalMark);
  const mockUp = pack.mockUps.at(-1);
  if (!mockUp) return null;
  const pieceIn = (slotId: number) => mockUp.pieces.find((each) => each.slotId === slotId)?.piece;
  const changes = slots.flatMap(({ slotId }) => {
    const filled = fillings[slotId];
    return filled ? [{ slotId, height_nm: filled.height_nm, tag: filled.tag, from: filled.from }] : [];
  });
  const grows = changes.reduce((sum, { slotId, height_nm }) => sum + height_nm - (pieceIn(slotId)?.height_nm ?? 0), 0);
  const now_nm = mockUp.read?.mean_nm ?? null;
  const after_nm = now_nm === null ? null : now_nm - grows;
  const swapped = () =>
    rebuild.record(
      changes.map(({ slotId, from }) => ({ slotId, from })),
      'own choice',
      filling.clear,
    );
  const takeBack = () => {
    rebuild.forget();
    filling.restart();
  };
  const enter = () => {
    if (filling.typed.trim() !== '') {
      rebuild.forget();
      return filling.commit();
    }
    if (changes.length > 0) return swapped();
    filling.refuse('Type what goes into this slot, or go to another with the arrows up and down.');
  };
  return (
    <CheckPage
      phase={null}
      prompt={
        <>
          <h1 className="say">
            {chosen
              ? `Your own swap: what goes into ${filling.chosenName}?`
              : `Ring off. Swap. Ring on.${after_nm === null ? '' : ` By the plain sum it should read ${write(after_nm)}.`}`}
          </h1>
          {pack.ruleSentences.map((sentence) => (
            <p key={sentence} className="quiet">
              {sentence}
            </p>
          ))}
        </>
      }
      keys={[
        {
          key: 'Enter',
          words: changes.length > 0 && filling.typed === '' ? 'Swapped, ring on' : 'Put it in',
          isFilled: true,
          onPress: enter,
        },
        {
          key: 'S',
          words: 'What to swap',
          onPress: () => {
            filling.clear();
            go({ at: 'swaps' });
          },
        },
        { key: 'B', words: 'Back a slot', onPress: filling.towardPiston },
        ...keysWhen(changes.length > 0, { key: 'X', words: 'Take it back', onPress: takeBack }),
      ]}
      aside={
        <PackDrawing
          now={stackNow(pack, mockUp, now_nm, changes)}
          planned={stackAfter(pack, mockUp, after_nm, changes)}
        />
      }
    >
      <SlotEntry
        filling={filling}
        onEnter={enter}
        rows={slots.map(({ slotId }) => {
          const piece = pieceIn(slotId);
          const filled = fillings[slotId];
          return {
            slotId,
            height: write(filled?.height_nm ?? piece?.height_nm ?? 0),
            tag: filled ? filled.tag : (piece?.tag ?? ''),
            note: filled && piece ? `for ${write(piece.height_nm)} ${piece.tag}`.trim() : '',
          };
        })}
      />
      <FailureSentence error={rebuild.error} />
    </CheckPage>
  );
}
