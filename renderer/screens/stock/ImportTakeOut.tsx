// Every list of the stock room as a file for a spreadsheet.
import { type CsvExport, csvExports } from '../../../app/stock/lists.contract.ts';
import { ExportKey } from './ExportKey.tsx';
import styles from './ImportTakeOut.module.css';

const listsAs: Record<CsvExport, { readonly words: string; readonly about: string }> = {
  parts: { words: 'Parts', about: 'what is said of each; can be taken in again' },
  batches: { words: 'Batches', about: 'what came in, by batch, and what is left of it' },
  movements: { words: 'Movements', about: 'the ledger: in, to a job, back, out, counted' },
  plates: { words: 'Plates', about: 'single plates with their heights' },
  cans: { words: 'Cans', about: 'counts by thickness' },
  reorder: { words: 'To buy', about: 'what is at its reorder point' },
  cores: { words: 'Cores', about: 'owed either way, and how each ended' },
};

export function ImportTakeOut() {
  return (
    <section className={styles.out} aria-labelledby="take-out">
      <h2 id="take-out">Take a list out</h2>
      <p className="quiet">Each as a CSV file; text that a spreadsheet could run as a formula is guarded.</p>
      <dl>
        {csvExports.map((what) => (
          <div key={what}>
            <dt>
              <ExportKey what={what}>{listsAs[what].words}</ExportKey>
            </dt>
            <dd className="small quiet">{listsAs[what].about}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
