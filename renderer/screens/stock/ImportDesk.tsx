// One file on the desk: what it is for and which column is what on the left, what every row would do on the right.
import { useState } from 'react';
import type { CsvFate, CsvTarget } from '../../../app/stock/lists.contract.ts';
import { Button } from '../../components/Button.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { Select } from '../../components/Select.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { ImportColumns } from './ImportColumns.tsx';
import styles from './ImportDesk.module.css';
import { type Imported, ImportFoot } from './ImportFoot.tsx';
import { ImportRows } from './ImportRows.tsx';
import type { SourceText } from './import-source-text.ts';
import { type ImportChoice, type Preview, useImportPreview } from './use-import-preview.ts';

const separators = [
  { id: ',', words: 'comma' },
  { id: ';', words: 'semicolon' },
  { id: '\t', words: 'tab' },
  { id: '|', words: 'upright bar' },
] as const;

type ImportDeskProps = { source: SourceText; onDone: (imported: Imported) => void; onLeave: () => void };

export function ImportDesk({ source, onDone, onLeave }: ImportDeskProps) {
  const [choice, setChoice] = useState<ImportChoice>({ target: 'parts', delimiter: null, mapping: null });
  const [show, setShow] = useState<CsvFate | 'all'>('all');
  const first = useImportPreview(source, choice, { show: 'all', offset: 0 });
  const preview = first.data;
  return (
    <div className={styles.desk}>
      <section className={styles.side} aria-label="The file">
        <RadioGroup<CsvTarget>
          label="What it is for"
          options={[
            { id: 'parts', words: 'Parts' },
            { id: 'counts', words: 'Counts' },
          ]}
          value={choice.target}
          onChange={(target) => setChoice({ ...choice, target, mapping: null })}
        />
        {preview && (
          <>
            <Select
              label="Separated by"
              options={separators}
              value={preview.delimiter}
              onChange={(delimiter) => setChoice({ ...choice, delimiter, mapping: null })}
            />
            <ImportColumns
              target={choice.target}
              preview={preview}
              onChange={(mapping) => setChoice({ ...choice, delimiter: preview.delimiter, mapping })}
            />
          </>
        )}
        <div className={styles.other}>
          <Button onPress={onLeave}>Another file</Button>
        </div>
      </section>
      <section className={styles.rows} aria-label="What it would do">
        {first.error && <FailureSentence error={first.error} />}
        {!preview && !first.error && (
          <p role="status" className="quiet">
            The file is being read…
          </p>
        )}
        {preview && preview.missing.length > 0 && <Missing preview={preview} />}
        {preview && preview.missing.length === 0 && (
          <>
            <RadioGroup label="Rows that would be" options={filters(preview)} value={show} onChange={setShow} />
            <ImportRows source={source} choice={choice} show={show} total={countOf(preview, show)} />
            <ImportFoot source={source} choice={choice} totals={preview.totals} onDone={onDone} />
          </>
        )}
      </section>
    </div>
  );
}

function Missing({ preview }: { preview: Preview }) {
  return (
    <p>
      <b>Say which column is {preview.missing.map((field) => `“${field}”`).join(' and which ')}.</b> Nothing can be
      tried before that.
    </p>
  );
}

function countOf({ totals }: Preview, show: CsvFate | 'all'): number {
  return show === 'all' ? totals.add + totals.change + totals.same + totals.reject : totals[show];
}

function filters(preview: Preview) {
  const count = (show: CsvFate | 'all') => countOf(preview, show).toLocaleString('en-US');
  return [
    { id: 'all', words: `All ${count('all')}` },
    { id: 'add', words: `Added ${count('add')}` },
    { id: 'change', words: `Changed ${count('change')}` },
    { id: 'same', words: `The same ${count('same')}` },
    { id: 'reject', words: `Left out ${count('reject')}` },
  ] as const;
}
