// Ways for a photo to come in: drop, paste, choose a file, or take what the phone put into its folder.
import { DropZone, FileTrigger, Text } from 'react-aria-components';
import { Button } from '../../components/Button.tsx';
import { classNames } from '../../components/class-names.ts';
import { Refusal } from '../../components/Refusal.tsx';
import { droppedFiles, pictureKinds, usePastedFiles } from '../../pictures/picture-files.ts';
import { useRead } from '../../rpc/use-read.ts';
import styles from './Photos.module.css';
import { sourceInFolder, sourcesOf, useAddPhotos } from './use-add-photos.ts';

export function AddPhotos({ jobId, onKept }: { jobId: number; onKept?: (photoId: number) => void }) {
  const { add, progress, troubles } = useAddPhotos(jobId, onKept);
  const folder = useRead('photos.getFolder', {});
  usePastedFiles((files) => void add(sourcesOf(files)));
  const inFolder = folder.data?.files ?? [];
  return (
    <div className={styles.add}>
      <DropZone
        className={classNames(styles.drop)}
        onDrop={async ({ items }) => add(sourcesOf(await droppedFiles(items)))}
      >
        <Text slot="label" className={classNames(styles.dropWords)}>
          Drop or paste photos here
        </Text>
        <FileTrigger
          acceptedFileTypes={pictureKinds}
          allowsMultiple
          onSelect={(files) => void add(sourcesOf(files ?? []))}
        >
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
