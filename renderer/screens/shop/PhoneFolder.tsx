// Which folder a phone fills with photos.
import { Button } from '../../components/Button.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { Loaded } from '../../frame/Loaded.tsx';
import { refusalAbout } from '../../rpc/failures.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './PhoneFolder.module.css';

export function PhoneFolder() {
  const read = useRead('photos.getFolder', {});
  return <Loaded read={read}>{({ folder }) => <FolderEntry key={folder} folder={folder} />}</Loaded>;
}

function FolderEntry({ folder }: { folder: string }) {
  const { person } = useAtBench();
  const watch = useWrite('photos.watchFolder');
  const typed = useDraft('folder of the phone', folder);
  return (
    <form
      noValidate
      className={styles.folder}
      onSubmit={(event) => {
        event.preventDefault();
        watch.mutate({ folder: typed.value, by: person.personId }, { onSuccess: typed.clear });
      }}
    >
      <TextField
        label="Folder the phone fills"
        hint="Photos that arrive there are offered on the open ticket. Nothing in it is changed. Empty: none."
        value={typed.value}
        onChange={typed.change}
        refusal={refusalAbout('folder', watch.error)}
      />
      <Button type="submit" isDisabled={typed.value === folder}>
        Look into this folder
      </Button>
    </form>
  );
}
