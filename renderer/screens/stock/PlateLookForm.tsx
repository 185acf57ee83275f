// One look at a plate: flat by the leaf on a flat plate, hot spots, glaze, cone; usable or not.
import { useEffect, useRef, useState } from 'react';
import { type Flatness, flatness } from '../../../app/stock/plates.contract.ts';
import { Button } from '../../components/Button.tsx';
import { Checkbox } from '../../components/Checkbox.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import styles from './PlatePanel.module.css';
import { useLengthWords } from './use-length-words.ts';

const blank = {
  flat: 'flat' as Flatness,
  offFlat: '',
  hasHotSpots: false,
  isGlazed: false,
  isConed: false,
  isUsable: true,
  note: '',
};

const flatWords: Record<Flatness, string> = { flat: 'Flat', 'not flat': 'Not flat', 'not tried': 'Not tried' };

export function PlateLookForm({ pieceId, onDone }: { pieceId: number; onDone: () => void }) {
  const words = useLengthWords();
  const { person } = useAtBench();
  const [look, setLook] = useState(blank);
  const change = (some: Partial<typeof blank>) => setLook((before) => ({ ...before, ...some }));
  const write = useWrite('stock.lookOverPlate');
  const flat = useRef<HTMLDivElement>(null);
  useEffect(() => flat.current?.querySelector<HTMLInputElement>('input:checked')?.focus(), []);
  const keep = () =>
    write.mutate(
      { pieceId, ...look, offFlat: look.flat === 'not flat' ? look.offFlat : '', by: person.personId },
      { onSuccess: onDone },
    );
  return (
    <EnterThrough label="Look over" onFinish={keep} className={styles.form}>
      <div ref={flat}>
        <RadioGroup
          label="On the flat plate"
          options={flatness.map((id) => ({ id, words: flatWords[id] }))}
          value={look.flat}
          onChange={(id) => change({ flat: id })}
        />
      </div>
      {look.flat === 'not flat' && (
        <TextField
          label="Off by"
          hint="The thickest leaf that goes under; or nothing."
          unit={words.unit}
          inputMode="decimal"
          value={look.offFlat}
          onChange={(offFlat) => change({ offFlat })}
          refusal={refusalAbout('offFlat', write.error)}
        />
      )}
      <div className={styles.seen}>
        <Checkbox isSelected={look.hasHotSpots} onChange={(hasHotSpots) => change({ hasHotSpots })}>
          Hot spots
        </Checkbox>
        <Checkbox isSelected={look.isGlazed} onChange={(isGlazed) => change({ isGlazed })}>
          Glazed
        </Checkbox>
        <Checkbox isSelected={look.isConed} onChange={(isConed) => change({ isConed })}>
          Coned
        </Checkbox>
      </div>
      <TextField label="Note" value={look.note} onChange={(note) => change({ note })} />
      <RadioGroup
        label="So it is"
        options={[
          { id: 'usable', words: 'Usable' },
          { id: 'rejected', words: 'Not to be used' },
        ]}
        value={look.isUsable ? 'usable' : 'rejected'}
        onChange={(id) => change({ isUsable: id === 'usable' })}
      />
      <Button type="submit" kind="filled" isPending={write.isPending}>
        Keep what was seen
      </Button>
      {refusalAbout('offFlat', write.error) === null && <FailureSentence error={write.error} />}
    </EnterThrough>
  );
}
