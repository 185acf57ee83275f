// What lies in a kit.
import { Link } from '@tanstack/react-router';
import type { Part } from '../../../app/stock/parts.contract.ts';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import styles from './PartSection.module.css';

export function KitContents({ part }: { part: Part }) {
  if (part.kind !== 'kit') return null;
  return (
    <section className={styles.section} aria-label="In this kit">
      <h2>In this kit</h2>
      {part.contents.length === 0 ? (
        <p className="quiet">Nothing is listed yet: press E and type the numbers of its parts.</p>
      ) : (
        <Table label="In this kit" density="dense">
          <colgroup>
            <col className={styles.count} />
          </colgroup>
          <thead>
            <tr>
              <ColumnHead isNumber>count</ColumnHead>
              <ColumnHead>number</ColumnHead>
              <ColumnHead>description</ColumnHead>
            </tr>
          </thead>
          <tbody>
            {part.contents.map(({ partId, number, description, quantity }) => (
              <tr key={partId}>
                <Cell isNumber isStrong>
                  {quantity}
                </Cell>
                <RowHead>
                  <Link to="/stock/parts/$partId" params={{ partId: String(partId) }} className="mono">
                    {number}
                  </Link>
                </RowHead>
                <Cell>{description}</Cell>
              </tr>
            ))}
          </tbody>
        </Table>
      )}
    </section>
  );
}
