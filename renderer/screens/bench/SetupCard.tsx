// The setup card, to be filled once per pack: how the dial and the drum stand, on what air, in what state the plates are.
import { useState } from 'react';
import { formatAmount } from '../../../app/quantities/format-amount.ts';
import { parseAmount } from '../../../app/quantities/parse-amount.ts';
import { unitNamed } from '../../../app/quantities/units.ts';
import type { Setup } from '../../../app/readings/readings.contract.ts';
import { waveStates } from '../../../app/specs/spec-sheet.ts';
import { Checkbox } from '../../components/Checkbox.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtCheck } from './at-check.ts';
import styles from './SetupCard.module.css';

type SetupCardProps = { setup: Setup; isFilling: boolean; onChange: (setup: Setup) => void; onFinish: () => void };

const psi = unitNamed('psi');

export function SetupCard({ setup, isFilling, onChange, onFinish }: SetupCardProps) {
  const { decimalMark } = useAtCheck().settings;
  const [air, setAir] = useState(setup.air_pa === null ? '' : formatAmount(setup.air_pa, psi, { decimals: 0 }));
  const [face, setFace] = useState(String(setup.dialFaceCounts));
  const change = (part: Partial<Setup>) => onChange({ ...setup, ...part });
  const readAir = (typed: string) =>
    parseAmount(typed, { quantity: 'pressure', unit: 'psi', decimalMark, what: 'a pressure' });
  const typedAir = readAir(air);
  const isFace = /^\d+$/.test(face) && Number(face) >= 10 && Number(face) <= 1000;
  const typeAir = (typed: string) => {
    setAir(typed);
    const read = readAir(typed);
    if (read.ok && read.value > 0) change({ air_pa: read.value });
  };
  const typeFace = (typed: string) => {
    setFace(typed);
    if (/^\d+$/.test(typed) && Number(typed) >= 10 && Number(typed) <= 1000) change({ dialFaceCounts: Number(typed) });
  };
  return (
    <EnterThrough label="Setup card" onFinish={() => typedAir.ok && isFace && onFinish()} className={styles.card}>
      <TextField
        label="Air while flowing"
        size="bench"
        unit="psi"
        value={air}
        onChange={typeAir}
        refusal={typedAir.ok ? null : typedAir.refusal.message}
        autoFocus={isFilling}
      />
      <TextField label="Port that is fed" size="bench" value={setup.port} onChange={(port) => change({ port })} />
      <RadioGroup
        label="Dial base on"
        size="bench"
        options={[
          { id: 'drum', words: 'drum' },
          { id: 'pump or lower drum', words: 'pump or lower drum' },
        ]}
        value={setup.dialBase}
        onChange={(dialBase) => change({ dialBase })}
      />
      <RadioGroup
        label="Plates"
        size="bench"
        options={[
          { id: 'soaked', words: 'soaked' },
          { id: 'dry', words: 'dry' },
        ]}
        value={setup.plates}
        onChange={(plates) => change({ plates })}
      />
      <RadioGroup
        label="Wave plate"
        size="bench"
        options={waveStates.map((id) => ({ id, words: id }))}
        value={setup.waveState}
        onChange={(waveState) => change({ waveState })}
      />
      <RadioGroup
        label="Dial"
        size="bench"
        options={[
          { id: 'plunger', words: 'plunger' },
          { id: 'lever', words: 'lever' },
        ]}
        value={setup.dialType}
        onChange={(dialType) => change({ dialType })}
      />
      <TextField
        label="Counts of the dial’s face"
        size="bench"
        value={face}
        onChange={typeFace}
        refusal={isFace ? null : 'A dial’s face has 10 to 1000 counts, such as 100.'}
      />
      <TextField label="Where the mark is" size="bench" value={setup.mark} onChange={(mark) => change({ mark })} />
      <Checkbox
        size="bench"
        isSelected={setup.isPistonSeated}
        onChange={(isPistonSeated) => change({ isPistonSeated })}
      >
        Piston stroked twice and down
      </Checkbox>
      <Checkbox size="bench" isSelected={setup.isOpenEndUp} onChange={(isOpenEndUp) => change({ isOpenEndUp })}>
        Open end up
      </Checkbox>
    </EnterThrough>
  );
}
