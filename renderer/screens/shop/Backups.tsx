// Backups: what there is, a second place, one file of everything, and bringing one back after a rehearsal.
import { useMutation } from '@tanstack/react-query';
import type { Backup, Backups as BackupsRead, Rehearsed } from '../../../app/backups/backups.contract.ts';
import { Button } from '../../components/Button.tsx';
import { Disclosure } from '../../components/Disclosure.tsx';
import { Notice } from '../../components/Notice.tsx';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { TextField } from '../../components/TextField.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { call } from '../../rpc/client.ts';
import { refusalAbout } from '../../rpc/failures.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { sayDayAndTime } from '../../text/say-date.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './Backups.module.css';

/** `canMake` is false where no shop file is open to be copied. */
export function Backups({ canMake = true }: { canMake?: boolean }) {
  const read = useRead('backups.getBackups', {});
  return (
    <Loaded read={read}>
      {(backups) => (
        <div className={styles.backups}>
          <WhereTheyAre backups={backups} />
          {canMake && <Make />}
          {canMake && <SecondPlace key={backups.secondPlace?.folder} backups={backups} />}
          {canMake && <WholeBackup />}
          <BringBack backups={backups.backups} />
        </div>
      )}
    </Loaded>
  );
}

function WhereTheyAre({ backups: { folder, backups, secondPlace, trouble, broughtBack } }: { backups: BackupsRead }) {
  const [newest] = backups;
  return (
    <>
      <dl className={styles.facts}>
        <dt>Backups</dt>
        <dd className="mono">{folder}</dd>
        <dt>Newest</dt>
        <dd>{newest ? sayDayAndTime(newest.at) : 'none yet'}</dd>
        {secondPlace && (
          <>
            <dt>Second place</dt>
            <dd>
              {secondPlace.newestAt === null ? 'nothing there yet' : `newest ${sayDayAndTime(secondPlace.newestAt)}`}
              {!secondPlace.isReachable && ', cannot be reached now'}
            </dd>
          </>
        )}
      </dl>
      {trouble !== '' && <Notice kind="caution">{trouble}</Notice>}
      {broughtBack !== '' && (
        <Notice>
          <span className={styles.path}>{broughtBack}</span>
        </Notice>
      )}
    </>
  );
}

function Make() {
  const write = useWrite('backups.makeBackup');
  return (
    <>
      <Button isPending={write.isPending} onPress={() => write.mutate({})}>
        Back up now
      </Button>
      {write.data && (
        <Notice kind="done">
          Backed up and checked: <span className={styles.path}>{write.data.file}</span>
        </Notice>
      )}
      <FailureSentence error={write.error} />
    </>
  );
}

function SecondPlace({ backups: { secondPlace } }: { backups: BackupsRead }) {
  const write = useWrite('backups.chooseSecondPlace');
  const kept = secondPlace?.folder ?? '';
  const typed = useDraft('second place for backups', kept);
  return (
    <form
      noValidate
      className={styles.entry}
      onSubmit={(event) => {
        event.preventDefault();
        write.mutate({ folder: typed.value.trim() || null }, { onSuccess: typed.clear });
      }}
    >
      <TextField
        label="Second place"
        hint="The whole path of a folder on a stick or another machine. Every backup goes there too. Empty: none."
        value={typed.value}
        onChange={typed.change}
        maxLength={1000}
        refusal={refusalAbout('folder', write.error)}
      />
      <Button type="submit" isDisabled={typed.value === kept} isPending={write.isPending}>
        Use this folder
      </Button>
      {refusalAbout('folder', write.error) === null && <FailureSentence error={write.error} />}
    </form>
  );
}

function WholeBackup() {
  const write = useWrite('backups.makeWholeBackup');
  const folder = useDraft('folder for a whole backup', '');
  return (
    <Disclosure words="Everything as one file">
      <form
        noValidate
        className={styles.entry}
        onSubmit={(event) => {
          event.preventDefault();
          write.mutate({ folder: folder.value.trim() });
        }}
      >
        <TextField
          label="Into the folder"
          hint="Its whole path. The shop file and every photo go into one file there."
          value={folder.value}
          onChange={folder.change}
          maxLength={1000}
          refusal={refusalAbout('folder', write.error)}
        />
        <Button type="submit" isPending={write.isPending}>
          Make one file
        </Button>
        {write.data && (
          <Notice kind="done">
            {write.data.photos} photos and the shop file, {size(write.data.bytes)}:{' '}
            <span className={styles.path}>{write.data.file}</span>
          </Notice>
        )}
        {refusalAbout('folder', write.error) === null && <FailureSentence error={write.error} />}
      </form>
    </Disclosure>
  );
}

function BringBack({ backups }: { backups: readonly Backup[] }) {
  const rehearsal = useMutation({ mutationFn: (file: string) => call('backups.rehearse', { file }) });
  return (
    <Disclosure words="Rehearse and bring back">
      <p>
        A rehearsal brings a backup back into a folder of its own, says what it holds, and throws it away again: nothing
        is touched. Bringing one back puts it in place of the shop file, and sets the old file aside.
      </p>
      {backups.length > 0 && (
        <Table label="Backups" density="dense">
          <thead>
            <tr>
              <ColumnHead>Made</ColumnHead>
              <ColumnHead isNumber>Jobs</ColumnHead>
              <ColumnHead isNumber>Readings</ColumnHead>
              <ColumnHead isNumber>Size</ColumnHead>
              <ColumnHead />
            </tr>
          </thead>
          <tbody>
            {backups.map((backup) => (
              <tr key={backup.file}>
                <RowHead>
                  {sayDayAndTime(backup.at)}
                  {backup.isPinned && ', before an update'}
                </RowHead>
                <Cell isNumber>{backup.jobs}</Cell>
                <Cell isNumber>{backup.readings}</Cell>
                <Cell isNumber>{size(backup.bytes)}</Cell>
                <Cell>
                  <Button
                    aria-label={`Rehearse the backup of ${sayDayAndTime(backup.at)}`}
                    onPress={() => rehearsal.mutate(backup.file)}
                  >
                    Rehearse
                  </Button>
                </Cell>
              </tr>
            ))}
          </tbody>
        </Table>
      )}
      <OtherFile onChoose={rehearsal.mutate} />
      {rehearsal.isPending && <p role="status">Bringing it back into a folder of its own…</p>}
      {rehearsal.data && <Held key={rehearsal.data.file} rehearsed={rehearsal.data} />}
      <FailureSentence error={rehearsal.error} />
    </Disclosure>
  );
}

function OtherFile({ onChoose }: { onChoose: (file: string) => void }) {
  const file = useDraft('backup to bring back', '');
  return (
    <form
      noValidate
      className={styles.entry}
      onSubmit={(event) => {
        event.preventDefault();
        if (file.value.trim() !== '') onChoose(file.value.trim());
      }}
    >
      <TextField
        label="Another file"
        hint="The whole path of a backup, of one file of everything, or of any shop file."
        value={file.value}
        onChange={file.change}
        maxLength={1000}
      />
      <Button type="submit">Rehearse this file</Button>
    </form>
  );
}

function Held({ rehearsed }: { rehearsed: Rehearsed }) {
  const { jobs, readings, photos, photosMissing, newestReadingAt } = rehearsed;
  return (
    <>
      <Notice kind={photosMissing === 0 ? 'done' : 'note'}>
        It restores: {jobs} jobs, {readings} readings
        {newestReadingAt !== null && `, the newest of ${sayDayAndTime(newestReadingAt)}`}, {photos} photos
        {photosMissing > 0 && `, of which ${photosMissing} are in no folder any more`}.
      </Notice>
      <PopoverDialog words="Bring this one back…" title="Put it in place of the shop file?">
        {(close) => <Restore rehearsed={rehearsed} onCancel={close} />}
      </PopoverDialog>
    </>
  );
}

function Restore({ rehearsed, onCancel }: { rehearsed: Rehearsed; onCancel: () => void }) {
  const restore = useWrite('backups.restore');
  return (
    <>
      <p>
        Whatever was written {rehearsed.at === null ? 'since' : `since ${sayDayAndTime(rehearsed.at)}`} is then only in
        the old file, which is set aside and not thrown away.
      </p>
      <div className={styles.keys}>
        <Button kind="filled" isPending={restore.isPending} onPress={() => restore.mutate({ file: rehearsed.file })}>
          Bring it back
        </Button>
        <Button onPress={onCancel}>Leave everything as it is</Button>
      </div>
      <FailureSentence error={restore.error} />
    </>
  );
}

function size(bytes: number): string {
  return bytes < 1e6 ? `${Math.ceil(bytes / 1e3)} kB` : `${(bytes / 1e6).toFixed(bytes < 1e7 ? 1 : 0)} MB`;
}
