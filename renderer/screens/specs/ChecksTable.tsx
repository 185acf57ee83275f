// The checks of the sheet, to be read: grouped by heading as on the ticket, limits as the book gives them.

import type { AmountField } from '../../../app/quantities/parse-amount.ts';
import { heightsText } from '../../../app/specs/heights-text.ts';
import { limitsText } from '../../../app/specs/limits-text.ts';
import type { Check, Limits } from '../../../app/specs/spec-sheet.ts';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import styles from './ChecksTable.module.css';
import { howRead } from './sheet-words.ts';
import { amountText, limitsField, washersField } from './typed-figures.ts';

export function ChecksTable({ checks }: { checks: readonly Check[] }) {
  const groups = Map.groupBy(checks, (check) => check.group);
  return (
    <Table label="Checks">
      <thead>
        <tr>
          <ColumnHead>check</ColumnHead>
          <ColumnHead isNumber>target</ColumnHead>
          <ColumnHead>limits</ColumnHead>
          <ColumnHead>unit</ColumnHead>
          <ColumnHead>holds for the</ColumnHead>
        </tr>
      </thead>
      {[...groups].map(([group, members]) => (
        <tbody key={group} className={styles.group}>
          <tr>
            <th scope="rowgroup" colSpan={5}>
              <b>{group}</b> <span className="small quiet">{sharedSource(members)}</span>
            </th>
          </tr>
          {members.map((check) => (
            <CheckRow key={check.name} check={check} saysSource={sharedSource(members) === ''} />
          ))}
        </tbody>
      ))}
    </Table>
  );
}

function Variants({ limits, field }: { limits: Extract<Limits, { kind: 'variants' }>; field: AmountField }) {
  return limits.variants.map(({ name, nominal, within }) => (
    <span key={name} className={styles.variant}>
      {name}: {amountText(nominal, field)} ± {amountText(within, field)}
    </span>
  ));
}

/** Where all checks of a heading come from, if it is one place. */
function sharedSource(checks: readonly Check[]): string {
  const [source = '', ...others] = new Set(checks.map((check) => check.sourceNote));
  return others.length === 0 ? source : '';
}

function CheckRow({ check, saysSource }: { check: Check; saysSource: boolean }) {
  const { settings } = useOpenShop();
  const { limits } = check;
  const field = limitsField(check, settings);
  const range = limits.kind === 'target' ? ({ ...limits, kind: 'range' } as const) : limits;
  const notes = [
    check.shims_nm.length > 0 ? `washers ${heightsText(check.shims_nm, washersField(check, settings))}` : '',
    saysSource ? check.sourceNote : '',
  ].filter((each) => each !== '');
  return (
    <tr>
      <RowHead>
        <span className={styles.name}>{check.name}</span> <span className="small quiet">{howRead(check)}</span>
        {notes.length > 0 && <span className={styles.notes}>{notes.join(' · ')}</span>}
      </RowHead>
      <Cell isNumber>{limits.kind === 'target' && amountText(limits.target, field)}</Cell>
      <Cell>{limits.kind === 'variants' ? <Variants limits={limits} field={field} /> : limitsText(range, field)}</Cell>
      <Cell isQuiet>{check.unit}</Cell>
      <Cell>
        <span className="small">{check.spots > 1 && check.holdsFor}</span>
      </Cell>
    </tr>
  );
}
