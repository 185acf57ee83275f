// Cores: what has to go back to suppliers and what customers still owe us, the earliest due first; settled in place.
import { useState } from 'react';
import { Checkbox } from '../../components/Checkbox.tsx';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { CoresOpenForm } from '../../cores/CoresOpenForm.tsx';
import { CoresTable } from '../../cores/CoresTable.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useRead } from '../../rpc/use-read.ts';
import styles from './CoresSection.module.css';
import { ExportKey } from './ExportKey.tsx';

export function CoresSection() {
  const [includeSettled, setIncludeSettled] = useState(false);
  const cores = useRead('stock.listCores', { includeSettled }, { keepsLast: true });
  return (
    <section className={styles.section} aria-labelledby="cores">
      <header className={styles.head}>
        <h2 id="cores">Cores</h2>
        <Checkbox isSelected={includeSettled} onChange={setIncludeSettled}>
          Settled ones too
        </Checkbox>
        <PopoverDialog words="Write a core down…" title="A core is owed">
          {(close) => <CoresOpenForm onDone={close} />}
        </PopoverDialog>
        <ExportKey what="cores">Cores as CSV</ExportKey>
      </header>
      <Loaded read={cores}>
        {(known) =>
          known.length > 0 ? (
            <CoresTable cores={known} />
          ) : (
            <p className="quiet">
              No core is owed either way. Receiving a part that has a core charge writes one down by itself.
            </p>
          )
        }
      </Loaded>
    </section>
  );
}
