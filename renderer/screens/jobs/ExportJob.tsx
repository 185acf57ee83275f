// The whole ticket as a folder to hand on or put away: its papers, photos and readings.
import { useMutation } from '@tanstack/react-query';
import { Button } from '../../components/Button.tsx';
import { Notice } from '../../components/Notice.tsx';
import { ExportFolderEntry, useExportFolder } from '../../frame/ExportFolderEntry.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { call } from '../../rpc/client.ts';
import { refusalAbout } from '../../rpc/failures.ts';
import styles from './ExportJob.module.css';

export function ExportJob({ jobId }: { jobId: number }) {
  const folder = useExportFolder();
  const run = useMutation({ mutationFn: () => call('jobs.exportJob', { jobId, folder: folder.value }) });
  return (
    <form
      noValidate
      className={styles.export}
      aria-labelledby="export-of-job"
      onSubmit={(event) => {
        event.preventDefault();
        if (!run.isPending) run.mutate();
      }}
    >
      <h2 id="export-of-job">The whole job as a folder</h2>
      <p className="quiet">
        Every paper as a PDF, the photos, and all that was written down as lists for any spreadsheet.
      </p>
      <ExportFolderEntry folder={folder} error={run.error} />
      <Button type="submit" isPending={run.isPending}>
        Export the job
      </Button>
      {run.data && (
        <Notice kind="done">
          The job is in <span className={styles.path}>{run.data.folder}</span>
        </Notice>
      )}
      {refusalAbout('folder', run.error) === null && <FailureSentence error={run.error} />}
    </form>
  );
}
