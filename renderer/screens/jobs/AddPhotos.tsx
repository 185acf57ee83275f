// Ways for a photo to come in: drop, paste, choose a file, or take what the phone put into its folder.
import { type DropItem, DropZone, FileTrigger, Text } from 'react-aria-components';
import { Button } from '../../components/Button.tsx';
import { classNames } from '../../components/class-names.ts';
import { Refusal } from '../../components/Refusal.tsx';
import { useRead } from '../../rpc/use-read.ts';
import styles from './Photos.module.css';
import { sourceInFolder, sourcesOf, useAddPhotos, usePastedPhotos } from './use-add-photos.ts';

const kinds = ['image/jpeg', 'image/png', 'image/webp'];

export function AddPhotos({ jobId }: { jobId: number }) {
  const { add, progress, troubles } = useAddPhotos(jobId);
  const folder = useRead('photos.getFolder', {});
  usePastedPhotos((files) => void add(sourcesOf(files)));
  const inFolder = folder.data?.files ?? [];
  const takeDropped = async (items: readonly DropItem[]) => {
    const files = await Promise.all(items.flatMap((item) => (item.kind === 'file' ? [item.getFile()] : [])));
    await add(sourcesOf(files));
  };
  return (
    <div className={styles.add}>
      <DropZone className={classNames(styles.drop)} onDrop={({ items }) => void takeDropped(items)}>
        <Text slot="label" className={classNames(styles.dropWords)}>
          Drop or paste photos here
        </Text>
        <FileTrigger acceptedFileTypes={kinds} allowsMultiple onSelect={(files) => void add(sourcesOf(files ?? []))}>
          <Button>Choose photos</Button>
        </FileTrigger>
        {inFolder.length > 0 && (
          <Button kind="filled" isDisabled={progress !== null} onPress={() => void add(inFolder.map(sourceInFolder))}>
            {inFolder.length === 1 ? 'Take the new one off the phone' : `Take ${inFolder.length} new off the phone`}
          </Button>
        )}
      </DropZone>
      {progress && <p role="status">{`Taking in ${progress.done + 1} of ${progress.all}…`}</p>}
      {[...(folder.data?.trouble ? [folder.data.trouble] : []), ...troubles].map((trouble) => (
        <Refusal key={trouble}>{trouble}</Refusal>
      ))}
    </div>
  );
}
