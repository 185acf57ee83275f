// Leaving with everything: the whole book as lists and photos in a folder, with how far it is and a way to stop.
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from '../../components/Button.tsx';
import { Checkbox } from '../../components/Checkbox.tsx';
import { Notice } from '../../components/Notice.tsx';
import { ExportFolderEntry, useExportFolder } from '../../frame/ExportFolderEntry.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { call } from '../../rpc/client.ts';
import { refusalAbout } from '../../rpc/failures.ts';
import { useRead } from '../../rpc/use-read.ts';
import styles from './ExportEverything.module.css';

export function ExportEverything() {
  const folder = useExportFolder();
  const [withPhotos, setWithPhotos] = useState(true);
  const run = useMutation({
    mutationFn: () => call('shop.exportEverything', { folder: folder.value, withPhotos }),
  });
  return (
    <form
      noValidate
      className={styles.export}
      onSubmit={(event) => {
        event.preventDefault();
        if (!run.isPending) run.mutate();
      }}
    >
      <ExportFolderEntry folder={folder} error={run.error} />
      <Checkbox isSelected={withPhotos} onChange={setWithPhotos}>
        The photos too
      </Checkbox>
      <div className={styles.keys}>
        <Button type="submit" isPending={run.isPending}>
          Export everything
        </Button>
        {run.isPending && <Running />}
      </div>
      {run.data && (
        <Notice kind="done">
          Everything is in <span className={styles.path}>{run.data.folder}</span>
        </Notice>
      )}
      {refusalAbout('folder', run.error) === null && <FailureSentence error={run.error} />}
    </form>
  );
}

function Running() {
  const progress = useRead('shop.getExport', {}, { again_ms: 500 });
  const written = progress.data?.written ?? 0;
  return (
    <>
      <Button onPress={() => void call('shop.stopExport', {})}>Stop</Button>
      <span role="status">
        {written === 0 ? 'Beginning…' : `${written.toLocaleString('en-US')} rows and photos so far`}
      </span>
    </>
  );
}
