// One pack of the sheet, to be read: drawn as it stands, what its slots take, its rules as sentences.
import { lengthWords } from '../../../app/charts/amounts.ts';
import { ruleSentence } from '../../../app/packs/placement.ts';
import type { Check, Pack, Slot } from '../../../app/specs/spec-sheet.ts';
import { ChartView } from '../../charts/ChartView.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import styles from './PackSection.module.css';
import { clearanceAsked, drawPack } from './pack-drawing.ts';
import { alikeSlots, patternWords } from './pack-pattern.ts';
import { amountText, heightField } from './typed-figures.ts';

export function PackSection({ pack, checks }: { pack: Pack; checks: readonly Check[] }) {
  const { settings } = useOpenShop();
  const field = heightField(settings);
  const write = (length_nm: number) => amountText(length_nm, field);
  const { short } = lengthWords(settings.lengthUnit, settings.decimalMark);
  const { chart, caption } = drawPack(pack, clearanceAsked(pack.name, checks), short);
  const hasFacing = pack.slots.some((slot) => slot.facing !== '');
  return (
    <section className={styles.pack} aria-label={pack.name}>
      <header className={styles.head}>
        <h3>{pack.name}</h3>
        <p>
          <span className="quiet">from the piston: </span>
          {patternWords(pack.slots.map((slot) => slot.kind))}
        </p>
      </header>
      <figure className={styles.drawing}>
        <ChartView chart={chart} />
        <figcaption className="small quiet">{caption}</figcaption>
      </figure>
      <div className={styles.facts}>
        <Table label={`Slots of ${pack.name}`}>
          <thead>
            <tr>
              <ColumnHead>slots</ColumnHead>
              <ColumnHead isNumber>height, {settings.lengthUnit}</ColumnHead>
              <ColumnHead>swapped for</ColumnHead>
              {hasFacing && <ColumnHead>lies</ColumnHead>}
            </tr>
          </thead>
          <tbody>
            {alikeSlots(pack.slots).map(({ name, slot }) => (
              <tr key={name}>
                <RowHead>{name}</RowHead>
                <Cell isNumber isQuiet={slot.nominal_nm === null}>
                  {slot.nominal_nm === null ? 'measured' : write(slot.nominal_nm)}
                </Cell>
                <Cell>{swappedFor(slot, write)}</Cell>
                {hasFacing && <Cell>{slot.facing}</Cell>}
              </tr>
            ))}
          </tbody>
        </Table>
        {pack.rules.length > 0 && (
          <ul>
            {pack.rules.map((rule) => (
              <li key={ruleSentence(rule)}>{ruleSentence(rule)}</li>
            ))}
          </ul>
        )}
        {pack.note !== '' && <p className={styles.note}>{pack.note}</p>}
      </div>
    </section>
  );
}

function swappedFor({ isAdjuster, outline, catalogue_nm }: Slot, write: (length_nm: number) => string): string {
  if (!isAdjuster) return '';
  return catalogue_nm.length === 0 ? outline : `${outline}, comes in ${catalogue_nm.map(write).join(' ')}`;
}
