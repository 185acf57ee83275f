// Which column of the file is what, each with what stands in its first rows.
import { type CsvTarget, csvFields } from '../../../app/stock/lists.contract.ts';
import { Select } from '../../components/Select.tsx';
import styles from './ImportColumns.module.css';
import type { Preview } from './use-import-preview.ts';

const leftOut = 'leave it out';

type ImportColumnsProps = {
  target: CsvTarget;
  preview: Preview;
  onChange: (mapping: readonly (string | null)[]) => void;
};

export function ImportColumns({ target, preview, onChange }: ImportColumnsProps) {
  const { headings, mapping, rows } = preview;
  const options = [leftOut, ...csvFields[target]].map((field) => ({ id: field, words: field }));
  const choose = (column: number, chosen: string) => {
    const field = chosen === leftOut ? null : chosen;
    // A field is filled by one column: choosing it here takes it from there.
    onChange(mapping.map((each, index) => (index === column ? field : each === field ? null : each)));
  };
  return (
    <div className={styles.columns}>
      <h2>Columns of the file</h2>
      <ul>
        {headings.map((heading, column) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place; two may have the same heading.
          <li key={column} className={styles.column}>
            <p>
              {heading || <span className="quiet">column {column + 1}, no heading</span>}
              <span className={styles.sample}>
                {rows
                  .slice(0, 3)
                  .map((row) => row.cells[column] ?? '')
                  .filter(Boolean)
                  .join(' · ')}
              </span>
            </p>
            <Select
              label={`Column ${heading || column + 1} is`}
              isLabelHidden
              options={options}
              value={mapping[column] ?? leftOut}
              onChange={(chosen) => choose(column, chosen)}
            />
          </li>
        ))}
      </ul>
    </div>
  );
}
