// How often something went wrong, and the key that writes a text about it.
import { useMutation } from '@tanstack/react-query';
import type { Output } from '../../../app/contract/contract.ts';
import { Button } from '../../components/Button.tsx';
import { Notice } from '../../components/Notice.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { call } from '../../rpc/client.ts';
import styles from './AboutScreen.module.css';

export function Diagnostics({ faultLog: { file, faults } }: { faultLog: Output<'about.getAbout'>['faultLog'] }) {
  const run = useMutation({ mutationFn: () => call('about.writeDiagnostics', {}) });
  return (
    <>
      {faults === 0 ? (
        <p>No fault was written down on this machine.</p>
      ) : (
        <p>
          {faults === 1 ? 'One fault is' : `${faults} faults are`} written down in{' '}
          <span className={styles.path}>{file}</span>
        </p>
      )}
      <Button isPending={run.isPending} onPress={() => run.mutate()}>
        Write diagnostics
      </Button>
      {run.data && (
        <Notice kind="done">
          Written to <span className={styles.path}>{run.data.file}</span>
        </Notice>
      )}
      <FailureSentence error={run.error} />
    </>
  );
}
