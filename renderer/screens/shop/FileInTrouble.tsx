// The shop file that is here cannot be opened: what is wrong, and what can be done, before anything is written.
import { Button } from '../../components/Button.tsx';
import { Notice } from '../../components/Notice.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useWrite } from '../../rpc/use-write.ts';
import { Backups } from './Backups.tsx';
import styles from './FirstSteps.module.css';

type FileInTroubleProps = { code: string; message: string; file: string };

/** Then the file may be sound, and a backup could not take its place either. */
const isInItsPlace = (code: string) => ['read-only', 'disk-full', 'disk', 'busy', 'cannot-open'].includes(code);

export function FileInTrouble({ code, message, file }: FileInTroubleProps) {
  const again = useWrite('shop.openOwnShop');
  return (
    <main className={styles.page}>
      <title>The shop file cannot be opened · Thoubook</title>
      <p className={styles.name}>Thoubook</p>
      <h1 className="say">The shop file cannot be opened</h1>
      <Notice kind="caution">{message}</Notice>
      <p className="mono">{file}</p>
      <p>
        Nothing was changed.{!isInItsPlace(code) && ' The file stays as it is, and is set aside whatever you do here.'}
      </p>
      <Button isPending={again.isPending} onPress={() => again.mutate({})}>
        Try to open it again
      </Button>
      <FailureSentence error={again.error} />
      {code === 'damaged' && <Salvage />}
      {!isInItsPlace(code) && (
        <>
          <h2>Bring a backup back</h2>
          <Backups canMake={false} />
        </>
      )}
    </main>
  );
}

function Salvage() {
  const salvage = useWrite('backups.salvage');
  return (
    <>
      <h2>Save what can be read</h2>
      <p>
        Takes the newest backup that is sound and adds every row of the damaged file that can still be read. Look
        through the newest tickets afterwards: what could not be read is not there. Shop says how much was saved.
      </p>
      <Button kind="filled" isPending={salvage.isPending} onPress={() => salvage.mutate({})}>
        Save what can be read
      </Button>
      <FailureSentence error={salvage.error} />
    </>
  );
}
