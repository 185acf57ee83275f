// A height that was written down wrong is put right, in the pack or among the loose plates; a loose plate that is not to
// be used is taken off the list.
import { useState } from 'react';
import { slotName } from '../../../app/packs/slot-name.ts';
import { formatLength } from '../../../app/quantities/format-amount.ts';
import { EntryLine } from '../../components/EntryLine.tsx';
import { Notice } from '../../components/Notice.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useAtCheck, usePack } from './at-check.ts';
import type { Go, Step } from './bench-step.ts';
import { CheckPage } from './CheckPage.tsx';
import styles from './CorrectHeightStep.module.css';
import { keysWhen } from './keys-when.ts';
import { useHandKeys } from './use-hand-keys.ts';

const reasons = { wrong: 'written down wrong', again: 'measured again', unused: 'not to be used' } as const;

type CorrectHeightStepProps = { step: Extract<Step, { at: 'correct' }>; go: Go };

export function CorrectHeightStep({ step, go }: CorrectHeightStepProps) {
  const { settings, by } = useAtCheck();
  const plates = usePlates(step.of);
  const [chosenId, choose] = useState<number | null>(null);
  const [typed, type] = useState('');
  const [isAgain, setAgain] = useState(false);
  const [said, say] = useState('');
  const correcting = useWrite('stock.remeasurePiece');
  const discarding = useWrite('stock.discardPiece');
  const write = (length_nm: number) => formatLength(length_nm, settings.lengthUnit, undefined, settings.decimalMark);
  const place = plates.findIndex((plate) => plate.pieceId === chosenId);
  const chosen = plates[place];
  const forget = () => {
    correcting.reset();
    discarding.reset();
  };
  const moveTo = (pieceId: number | null) => {
    forget();
    type('');
    choose(pieceId);
  };
  useHandKeys([
    { key: 'ArrowUp', onPress: () => moveTo(plates.at(place < 0 ? -1 : place - 1)?.pieceId ?? null) },
    { key: 'ArrowDown', onPress: () => moveTo(plates[(place + 1) % plates.length]?.pieceId ?? null) },
  ]);
  const settled = (sentence: string) => ({
    onSuccess: () => {
      moveTo(null);
      say(sentence);
    },
  });
  const correct = () => {
    if (!chosen || typed.trim() === '') return go(step.back);
    const reason = isAgain ? reasons.again : reasons.wrong;
    const sentence = `${chosen.name} was ${write(chosen.height_nm)}, ${reason}. It is ${typed.trim()} now.`;
    correcting.mutate({ pieceId: chosen.pieceId, typed: typed.trim(), reason, by }, settled(sentence));
  };
  const discard = () => {
    if (!chosen) return;
    const sentence = `${chosen.name}, ${write(chosen.height_nm)}, is not to be used.`;
    discarding.mutate({ pieceId: chosen.pieceId, reason: reasons.unused, by }, settled(sentence));
  };
  return (
    <CheckPage
      phase={null}
      prompt={
        <>
          <h1 className="say">
            {chosen
              ? `${chosen.name}: ${write(chosen.height_nm)} was ${isAgain ? 'measured again' : 'written down wrong'}. ${isAgain ? 'What is it now?' : 'What is right?'}`
              : 'Which height is wrong?'}
          </h1>
          <p className="quiet">Up and down choose the plate. The old height stays on record.</p>
        </>
      }
      keys={[
        { key: 'Enter', words: typed.trim() === '' ? 'Done' : 'Put it right', isFilled: true, onPress: correct },
        ...keysWhen(chosen !== undefined, {
          key: 'M',
          words: isAgain ? 'Written down wrong' : 'Measured again',
          onPress: () => setAgain(!isAgain),
        }),
        ...keysWhen(chosen !== undefined && step.of === 'loose', {
          key: 'X',
          words: 'Not to be used',
          onPress: discard,
        }),
      ]}
    >
      {chosen && (
        <EntryLine
          key={`${chosen.pieceId} ${isAgain}`}
          label={`right height, ${settings.lengthUnit}`}
          value={typed}
          onChange={(text) => {
            forget();
            type(text);
          }}
          onCommit={correct}
          refusal={correcting.error?.message ?? discarding.error?.message ?? null}
          isCommitting={correcting.isPending || discarding.isPending}
        />
      )}
      {said !== '' && <Notice kind="done">{said}</Notice>}
      <div className={styles.list}>
        <Table
          label={step.of === 'pack' ? 'In the pack, snap ring above, piston below' : 'Loose plates'}
          density="reading"
        >
          <thead>
            <tr>
              <ColumnHead>plate</ColumnHead>
              <ColumnHead isNumber>height, {settings.lengthUnit}</ColumnHead>
            </tr>
          </thead>
          <tbody>
            {plates.map((plate) => (
              <tr
                key={plate.pieceId}
                className={plate === chosen ? styles.now : undefined}
                aria-current={plate === chosen || undefined}
              >
                <RowHead>
                  <button type="button" className={styles.plate} onClick={() => moveTo(plate.pieceId)}>
                    {plate.name}
                  </button>
                </RowHead>
                <Cell isNumber>{write(plate.height_nm)}</Cell>
              </tr>
            ))}
          </tbody>
        </Table>
      </div>
    </CheckPage>
  );
}

/** As they lie: the ring above in a pack, the thinnest above among the loose ones. */
function usePlates(of: 'pack' | 'loose'): ReadonlyArray<{ pieceId: number; name: string; height_nm: number }> {
  const { slots, mockUps } = usePack();
  const loose = useRead('stock.listLoose', of === 'loose' ? { outline: '' } : null).data;
  if (of === 'pack') {
    const inPack = mockUps.at(-1)?.pieces ?? [];
    return slots
      .flatMap((slot, index) =>
        inPack
          .filter(({ slotId }) => slotId === slot.slotId)
          .map(({ piece }) => ({ ...piece, name: `${slotName(slots, index)} ${piece.tag}`.trim() })),
      )
      .map(({ pieceId, name, height_nm }) => ({ pieceId, name: capitalised(name), height_nm }))
      .reverse();
  }
  const fits = (kind: string, outline: string) =>
    slots.some((slot) => slot.isAdjuster && slot.kind === kind && slot.outline === outline);
  return (loose?.pieces ?? [])
    .filter(({ kind, outline }) => fits(kind, outline))
    .map(({ pieceId, kind, tag, height_nm }) => ({
      pieceId,
      name: capitalised(`${kind} ${tag || 'without a tag'}`),
      height_nm,
    }));
}

function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
