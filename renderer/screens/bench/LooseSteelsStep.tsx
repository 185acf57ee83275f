// The loose plates of this pack, and one more typed in: a single one with its tag, or a can with its count.
import { useState } from 'react';
import { formatLength } from '../../../app/quantities/format-amount.ts';
import type { PieceKind } from '../../../app/specs/spec-sheet.ts';
import { EntryLine } from '../../components/EntryLine.tsx';
import { Notice } from '../../components/Notice.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useAtCheck, usePack } from './at-check.ts';
import type { Go } from './bench-step.ts';
import { CheckPage } from './CheckPage.tsx';
import { keysWhen } from './keys-when.ts';
import styles from './LooseSteelsStep.module.css';
import { fittingSlot, parseHeightAndCount, parseHeightAndTag } from './slot-filling.ts';
import { useBenchDraft } from './use-bench-draft.ts';
import { useBeside } from './use-beside.tsx';

type Outline = { readonly kind: PieceKind; readonly outline: string };

export function LooseSteelsStep({ go }: { go: Go }) {
  const beside = useBeside();
  const { settings, by } = useAtCheck();
  const { packId, slots, mockUps } = usePack();
  const [isCan, setCan] = useState(false);
  const [chosen, choose] = useState(0);
  const [refusal, refuse] = useState<string | null>(null);
  const [said, say] = useState('');
  const line = useBenchDraft(`loose plate for pack ${packId}`, '');
  const adding = useWrite('stock.addPiece');
  const canning = useWrite('stock.addCan');
  const loose = useRead('stock.listLoose', { outline: '' });
  const outlines = adjusterOutlines(slots);
  const slot = outlines[chosen] ?? outlines[0];
  const other = () => choose((chosen + 1) % outlines.length);
  const back = () => go(mockUps.length > 0 ? { at: 'swaps' } : { at: 'contents' });
  const write = (length_nm: number) => formatLength(length_nm, settings.lengthUnit, undefined, settings.decimalMark);
  if (!slot) return null;

  const add = () => {
    if (line.value.trim() === '') return back();
    const text = line.value.trim();
    const outcome = {
      onSuccess: () => {
        line.clear();
        refuse(null);
        say(`${text} is among the loose ones.`);
      },
      onError: (error: Error) => refuse(error.message),
    };
    const parse = isCan ? parseHeightAndCount : parseHeightAndTag;
    const parsed = parse(text, slot.kind, settings);
    if (!parsed.ok) return refuse(parsed.refusal.message);
    const { typed, last } = parsed.value;
    if (isCan) canning.mutate({ ...slot, typed, count: Number(last), by }, outcome);
    else adding.mutate({ ...slot, tag: last, typed, by }, outcome);
  };
  const fitting = fittingSlot(loose.data ?? { pieces: [], cans: [] }, slot);
  return (
    <CheckPage
      phase={null}
      prompt={
        <h1 className="say">
          {isCan ? `A can of ${slot.kind}s for ${slot.outline}.` : `A loose ${slot.kind} for ${slot.outline}.`}
        </h1>
      }
      keys={[
        { key: 'Enter', words: line.value.trim() === '' ? 'Done' : 'Add it', isFilled: true, onPress: add },
        { key: 'N', words: isCan ? 'A single one' : 'A can', onPress: () => setCan(!isCan) },
        // There from the start: a hand that knows the keys does not wait for the list.
        ...keysWhen(!loose.data || fitting.pieces.length > 0, {
          key: 'H',
          words: 'Correct or take off',
          onPress: () => go({ at: 'correct', of: 'loose', back: { at: 'loose' } }),
        }),
        ...keysWhen(outlines.length > 1, { key: 'O', words: 'Another kind', onPress: other }),
      ]}
      aside={beside}
    >
      <EntryLine
        key={`${isCan} ${chosen}`}
        label={
          isCan
            ? `height and count, ${settings.lengthUnit}, such as 77.0\u00a012`
            : `height, ${settings.lengthUnit}; a tag after a blank, such as 77.0\u00a0A48`
        }
        value={line.value}
        onChange={(text) => {
          refuse(null);
          line.change(text);
        }}
        onCommit={add}
        refusal={refusal}
        isCommitting={adding.isPending || canning.isPending}
      />
      {said !== '' && <Notice kind="done">{said}</Notice>}
      <div className={styles.list}>
        <Table label="Loose and fitting" density="reading">
          <thead>
            <tr>
              <ColumnHead>tag or can</ColumnHead>
              <ColumnHead isNumber>height, {settings.lengthUnit}</ColumnHead>
              <ColumnHead isNumber>count</ColumnHead>
            </tr>
          </thead>
          <tbody>
            {fitting.pieces.map((piece) => (
              <tr key={piece.pieceId}>
                <RowHead>{piece.tag || 'no tag'}</RowHead>
                <Cell isNumber>{write(piece.height_nm)}</Cell>
                <Cell isNumber>1</Cell>
              </tr>
            ))}
            {fitting.cans.map((can) => (
              <tr key={`can ${can.canId}`}>
                <RowHead>can</RowHead>
                <Cell isNumber>{write(can.height_nm)}</Cell>
                <Cell isNumber>{can.count}</Cell>
              </tr>
            ))}
          </tbody>
        </Table>
      </div>
    </CheckPage>
  );
}

function adjusterOutlines(slots: ReadonlyArray<Outline & { readonly isAdjuster: boolean }>): Outline[] {
  const adjusters = slots.filter((slot) => slot.isAdjuster && slot.outline !== '');
  return [...Map.groupBy(adjusters, ({ kind, outline }) => `${kind} ${outline}`).values()].flatMap((each) =>
    each.slice(0, 1).map(({ kind, outline }) => ({ kind, outline })),
  );
}
