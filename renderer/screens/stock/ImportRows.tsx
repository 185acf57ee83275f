// What every row of the file would do: a list as long as the file, of which only what is in sight is there.
import { useEffect, useRef, useState } from 'react';
import type { CsvFate } from '../../../app/stock/lists.contract.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import styles from './ImportRows.module.css';
import type { SourceText } from './import-source-text.ts';
import { type ImportChoice, useImportPreview, windowStep } from './use-import-preview.ts';

type ImportRowsProps = { source: SourceText; choice: ImportChoice; show: CsvFate | 'all'; total: number };

/** As the style sheet says; a row is never taller. */
const rowHeight = 56;

/** A sign beside the word, so that it is not told by colour. */
const fateWords: Record<CsvFate, string> = { add: '+ add', change: '→ change', same: '= same', reject: '× leave out' };

export function ImportRows({ source, choice, show, total }: ImportRowsProps) {
  const box = useRef<HTMLElement>(null);
  const [top, setTop] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another list begins at its top.
  useEffect(() => {
    box.current?.scrollTo(0, 0);
  }, [show, choice]);
  const firstInSight = Math.floor(top / rowHeight);
  const offset = Math.max(0, Math.floor((firstInSight - 20) / windowStep) * windowStep);
  const preview = useImportPreview(source, choice, { show, offset });
  if (preview.error) return <FailureSentence error={preview.error} />;
  // While another window is looked up the last one stands, where it belongs; rows of another list do not.
  const there = preview.data?.show === show ? preview.data : undefined;
  const rows = there?.rows ?? [];
  const before = there?.offset ?? 0;
  return (
    <section
      ref={box}
      className={styles.box}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard.
      tabIndex={0}
      aria-label="Rows of the file"
      onScroll={(event) => setTop(event.currentTarget.scrollTop)}
    >
      <table className={styles.rows} aria-label="Rows of the file" aria-rowcount={total + 1}>
        <thead>
          <tr aria-rowindex={1}>
            <th scope="col" className={styles.line}>
              line
            </th>
            <th scope="col" className={styles.fate}>
              would
            </th>
            <th scope="col">what changes, or why not</th>
          </tr>
        </thead>
        <tbody>
          <Gap rows={before} />
          {rows.map((row, index) => (
            <tr key={row.line} aria-rowindex={before + index + 2} className={styles.row}>
              <td className={styles.line}>{row.line}</td>
              <td className={styles.fate}>{fateWords[row.fate]}</td>
              <td>
                <span className={styles.says}>{row.says}</span>
                <span className={styles.cells}>{row.cells.join(' · ')}</span>
              </td>
            </tr>
          ))}
          <Gap rows={total - before - rows.length} />
        </tbody>
      </table>
      {total === 0 && <p className={styles.none}>No row of the file would be that.</p>}
    </section>
  );
}

function Gap({ rows }: { rows: number }) {
  if (rows <= 0) return null;
  return (
    <tr style={{ height: rows * rowHeight }}>
      <td colSpan={3} />
    </tr>
  );
}
