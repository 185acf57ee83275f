// A file taken in: chosen, its columns said, tried out row by row, and only then imported; and every list taken out.
import { useState } from 'react';
import { PageHead } from '../../frame/PageHead.tsx';
import { ImportDesk } from './ImportDesk.tsx';
import { ImportDone } from './ImportDone.tsx';
import type { Imported } from './ImportFoot.tsx';
import styles from './ImportScreen.module.css';
import { ImportSource } from './ImportSource.tsx';
import { ImportTakeOut } from './ImportTakeOut.tsx';
import type { SourceText } from './import-source-text.ts';
import { StockTabs } from './StockTabs.tsx';

export function ImportScreen() {
  const [source, setSource] = useState<SourceText | null>(null);
  const [imported, setImported] = useState<Imported | null>(null);
  const startAgain = () => {
    setSource(null);
    setImported(null);
  };
  return (
    <div className={styles.page}>
      <StockTabs />
      <PageHead title="Import" facts={source && <span>{source.name}</span>} />
      {source === null ? (
        <div className={styles.start}>
          <ImportSource onTake={setSource} />
          <ImportTakeOut />
        </div>
      ) : imported === null ? (
        <ImportDesk key={source.key} source={source} onDone={setImported} onLeave={startAgain} />
      ) : (
        <ImportDone imported={imported} onLeave={startAgain} />
      )}
    </div>
  );
}
