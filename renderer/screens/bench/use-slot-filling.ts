// Going through the slots of a pack, a plate typed or picked for each.
import { useState } from 'react';
import { slotName } from '../../../app/packs/slot-name.ts';
import type { SavedSlot } from '../../../app/specs/specs.contract.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useAtCheck, usePack } from './at-check.ts';
import { type AtHand, type Filling, type Fillings, fittingSlot, parseFilling } from './slot-filling.ts';
import { useBenchDraft } from './use-bench-draft.ts';
import { useHandKeys } from './use-hand-keys.ts';

const nothingAtHand: AtHand = { pieces: [], cans: [] };

type SlotFillingInput = {
  /** What the draft is of. */
  readonly what: string;
  /** A height of the slot's catalogue is a new part, not one that was measured. */
  readonly isBought: boolean;
  /** Which slot comes after one; null when there is nothing left to type. */
  readonly next: (fillings: Fillings, after: SavedSlot | null) => SavedSlot | null;
};

export function useSlotFilling({ what, isBought, next }: SlotFillingInput) {
  const { job, settings } = useAtCheck();
  const { packId, slots } = usePack();
  const name = `${what} of pack ${packId}, job ${job.jobId}`;
  const fillings = useBenchDraft<Fillings>(name, {});
  const line = useBenchDraft(`${name}, line`, '');
  const [chosen, choose] = useState<SavedSlot | null>(() => next(fillings.value, null));
  const [refusal, refuse] = useState<string | null>(null);
  const loose = useRead('stock.listLoose', { outline: '' }).data ?? nothingAtHand;

  const moveTo = (slot: SavedSlot | null) => {
    refuse(null);
    choose(slot);
  };
  const put = (slot: SavedSlot, filling: Filling) => {
    const filled = { ...fillings.value, [slot.slotId]: filling };
    fillings.change(filled);
    line.clear();
    moveTo(next(filled, slot));
  };
  const place = chosen ? slots.findIndex((slot) => slot.slotId === chosen.slotId) : null;
  // Where no slot is chosen, up begins at the piston and down at the ring.
  const toward = (step: 1 | -1) => {
    const slot = place === null ? slots.at(step === 1 ? 0 : -1) : slots[place + step];
    if (slot) moveTo(slot);
  };
  // The ring is above and the piston below, on the screen as on the bench.
  useHandKeys([
    { key: 'ArrowUp', onPress: () => toward(1) },
    { key: 'ArrowDown', onPress: () => toward(-1) },
  ]);
  const clear = () => {
    fillings.clear();
    line.clear();
  };
  return {
    fillings: fillings.value,
    chosen,
    chosenName: place === null ? '' : slotName(slots, place),
    /** The loose plates that go into the chosen slot. */
    fitting: chosen ? fittingSlot(loose, chosen) : nothingAtHand,
    typed: line.value,
    refusal,
    refuse,
    type(text: string) {
      refuse(null);
      line.change(text);
    },
    /** Takes the typed plate for the chosen slot. */
    commit() {
      if (!chosen) return;
      const filling = parseFilling(line.value, chosen, loose, settings, isBought);
      if (filling.ok) put(chosen, filling.value);
      else refuse(filling.refusal.message);
    },
    pick(filling: Filling) {
      if (chosen) put(chosen, filling);
    },
    /** Leaves the chosen slot as it is. */
    skip: () => moveTo(next(fillings.value, chosen)),
    moveTo: (slotId: number) => moveTo(slots.find((slot) => slot.slotId === slotId) ?? null),
    towardPiston: () => toward(-1),
    /** Forgets all of it: it was recorded, or given up. */
    clear,
    restart() {
      clear();
      moveTo(next({}, null));
    },
  };
}

export type SlotFilling = ReturnType<typeof useSlotFilling>;
