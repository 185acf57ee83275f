// The lists of a sheet as a document: every line with what it asks for.
import { sayAsks } from '../../../app/jobs/answer-text.ts';
import type { SavedList } from '../../../app/specs/specs.contract.ts';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import groups from './ChecksTable.module.css';
import styles from './SheetScreen.module.css';

const asked = { tick: 'a tick', words: 'words', change: 'old and new', count: '', choice: '', stall: '' } as const;

export function ListsOfSheet({ lists }: { lists: readonly SavedList[] }) {
  if (lists.length === 0) return null;
  return (
    <section aria-labelledby="lists">
      <h2 id="lists" className={styles.title}>
        Lists
      </h2>
      <Table label="Lists" density="dense">
        <thead>
          <tr>
            <ColumnHead>line</ColumnHead>
            <ColumnHead>asks for</ColumnHead>
          </tr>
        </thead>
        {lists.map(({ listId, name, when, packName, sourceNote, lines }) => (
          <tbody key={listId} className={groups.group}>
            <tr>
              <th scope="rowgroup" colSpan={2}>
                <b>{name}</b>{' '}
                <span className="small quiet">
                  {[when, packName ?? '', sourceNote].filter((each) => each !== '').join(', ')}
                </span>
              </th>
            </tr>
            {lines.map(({ lineId, words, asks }) => (
              <tr key={lineId}>
                <RowHead>{words}</RowHead>
                <Cell>{asked[asks.kind] || sayAsks(asks)}</Cell>
              </tr>
            ))}
          </tbody>
        ))}
      </Table>
    </section>
  );
}
