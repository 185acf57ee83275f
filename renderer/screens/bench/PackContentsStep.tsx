// What sits in the pack, from the piston to the ring: the steels typed, what nobody measures offered as nominal.
import { useState } from 'react';
import { formatLength } from '../../../app/quantities/format-amount.ts';
import type { SavedSlot } from '../../../app/specs/specs.contract.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useWrite } from '../../rpc/use-write.ts';
import { useAtCheck, usePack } from './at-check.ts';
import type { Go } from './bench-step.ts';
import { CheckPage } from './CheckPage.tsx';
import { keysWhen } from './keys-when.ts';
import { PackDrawing } from './PackDrawing.tsx';
import { heightsOf, stackOf } from './pack-stack.ts';
import { SlotEntry } from './SlotEntry.tsx';
import { useSlotFilling } from './use-slot-filling.ts';

export function PackContentsStep({ go }: { go: Go }) {
  const { job, settings, takes, by } = useAtCheck();
  const pack = usePack();
  const { slots } = pack;
  const [asksAll, askAll] = useState(false);
  const recording = useWrite('packs.recordMockUp');
  const filling = useSlotFilling({
    what: 'contents',
    isBought: false,
    next: (fillings, after) => {
      const isOpen = (slot: SavedSlot) => !fillings[slot.slotId] && (asksAll || slot.nominal_nm === null);
      const from = after ? slots.findIndex((slot) => slot.slotId === after.slotId) + 1 : 0;
      return (
        slots.slice(from).find(isOpen) ??
        slots.slice(0, from).find((slot) => isOpen(slot) && slot.nominal_nm === null) ??
        null
      );
    },
  });
  const { chosen, fillings } = filling;
  const write = (length_nm: number) => formatLength(length_nm, settings.lengthUnit, undefined, settings.decimalMark);
  const heightIn = (slot: SavedSlot) => fillings[slot.slotId]?.height_nm ?? slot.nominal_nm;
  const stack = stackOf(pack, null, (slotId) => {
    const slot = slots.find((each) => each.slotId === slotId);
    const height_nm = slot ? heightIn(slot) : null;
    return height_nm === null ? null : { height_nm, tag: fillings[slotId]?.tag ?? '' };
  });

  const record = () => {
    if (recording.isPending) return;
    const pieces = Object.entries(fillings).map(([slotId, { from }]) => ({ slotId: Number(slotId), from }));
    const note = pack.mockUps.length === 0 ? 'as found' : 'entered again';
    recording.mutate(
      { jobId: job.jobId, packId: pack.packId, pieces, note, by },
      {
        onSuccess: () => {
          filling.clear();
          go(takes.some((take) => take.readings.length > 0) ? { at: 'swaps' } : { at: 'set up' });
        },
      },
    );
  };
  const enter = () => {
    if (!chosen) return record();
    if (filling.typed.trim() !== '') return filling.commit();
    if (heightIn(chosen) !== null) return filling.skip();
    filling.refuse(`Type the height of ${filling.chosenName} first.`);
  };
  const measureAll = () => {
    askAll(true);
    const first = slots.find((slot) => !fillings[slot.slotId]);
    if (first) filling.moveTo(first.slotId);
  };
  const isNearest = chosen !== null && chosen.slotId === slots[0]?.slotId;
  const offered = chosen && heightIn(chosen) !== null ? ` Enter takes ${write(heightIn(chosen) ?? 0)}.` : '';
  return (
    <CheckPage
      phase={null}
      prompt={
        <h1 className="say">
          {chosen
            ? `What sits in the pack? ${capitalised(filling.chosenName)}${isNearest ? ', nearest the piston' : ''}.${offered}`
            : `${write(heightsOf(stack))} in the pack, all told. Is that what sits in it?`}
        </h1>
      }
      keys={[
        { key: 'Enter', words: chosen ? 'Next' : 'That sits in it', isFilled: true, onPress: enter },
        { key: 'B', words: 'Back a slot', onPress: filling.towardPiston },
        ...keysWhen(!asksAll, { key: 'F', words: 'Measure the others too', onPress: measureAll }),
        { key: 'L', words: 'Loose plates', isRare: true, onPress: () => go({ at: 'loose' }) },
        { key: 'R', words: 'Back to the reading', isRare: true, onPress: () => go({ at: 'result' }) },
      ]}
      aside={
        <PackDrawing now={stack}>
          <h2>{pack.name} pack, so far</h2>
        </PackDrawing>
      }
    >
      <SlotEntry
        filling={filling}
        onEnter={enter}
        rows={slots.map((slot) => {
          const filled = fillings[slot.slotId];
          const height_nm = heightIn(slot);
          return {
            slotId: slot.slotId,
            height: height_nm === null ? '' : write(height_nm),
            tag: filled?.tag ?? '',
            note: filled || height_nm === null ? '' : 'nominal',
          };
        })}
      />
      <FailureSentence error={recording.error} />
    </CheckPage>
  );
}

function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
