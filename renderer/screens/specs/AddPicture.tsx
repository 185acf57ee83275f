// Ways for a picture to come onto a sheet: drop, paste, a file, or a photo that a ticket already has.
import { useState } from 'react';
import { DropZone, FileTrigger, Text } from 'react-aria-components';
import type { Output } from '../../../app/contract/contract.ts';
import { Button } from '../../components/Button.tsx';
import { classNames } from '../../components/class-names.ts';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { Refusal } from '../../components/Refusal.tsx';
import { Select } from '../../components/Select.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { droppedFiles, pictureFiles, pictureKinds, usePastedFiles } from '../../pictures/picture-files.ts';
import { shrinkPhoto } from '../../pictures/shrink-photo.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import styles from './Pictures.module.css';
import type { KeptFile } from './picture-edits.ts';

type AddPictureProps = { onAdd: (title: string, file: KeptFile) => void };

export function AddPicture({ onAdd }: AddPictureProps) {
  const { person } = useAtBench();
  const keep = useWrite('specs.keepPicture');
  const [trouble, setTrouble] = useState('');
  const take = async (files: Iterable<File>) => {
    const [file] = pictureFiles(files);
    if (!file || keep.isPending) return;
    setTrouble('');
    try {
      const { jpegBase64 } = await shrinkPhoto(file, file.name);
      const kept = await keep.mutateAsync({ of: { jpegBase64 }, by: person.personId });
      onAdd(file.name.replace(/\.[a-z]+$/i, ''), kept);
    } catch (thrown) {
      setTrouble(thrown instanceof Error ? thrown.message : String(thrown));
    }
  };
  usePastedFiles((files) => void take(files));
  return (
    <DropZone className={classNames(styles.drop)} onDrop={async ({ items }) => take(await droppedFiles(items))}>
      <Text slot="label" className="small quiet">
        Drop or paste the shop’s own picture of a part here: a pump face, a case, a valve body.
      </Text>
      <FileTrigger acceptedFileTypes={pictureKinds} onSelect={(files) => void take(files ?? [])}>
        <Button isPending={keep.isPending}>Choose a picture</Button>
      </FileTrigger>
      <PopoverDialog words="From a ticket’s photos" title="From a ticket’s photos">
        {(close) => (
          <PhotosOfTickets
            onTake={async ({ photoId, caption }) => {
              const kept = await keep.mutateAsync({ of: { photoId }, by: person.personId });
              close();
              onAdd(caption, kept);
            }}
          />
        )}
      </PopoverDialog>
      {trouble !== '' && <Refusal>{trouble}</Refusal>}
    </DropZone>
  );
}

type Photo = Output<'photos.listPhotos'>[number];

function PhotosOfTickets({ onTake }: { onTake: (photo: Photo) => Promise<void> }) {
  const jobs = useRead('jobs.listJobs', { text: '', includeClosed: true });
  const [jobId, setJobId] = useState<number | null>(null);
  const photos = useRead('photos.listPhotos', jobId === null ? null : { jobId });
  return (
    <div className={styles.fromTicket}>
      <Select
        label="Job"
        options={(jobs.data ?? []).map(({ jobId: id, number, serial }) => ({ id, words: `${number}, ${serial}` }))}
        value={jobId}
        onChange={setJobId}
      />
      <FailureSentence error={photos.error} />
      {photos.data?.length === 0 && <p className="quiet">This ticket has no photos.</p>}
      {photos.data?.map((photo, index) => (
        <Button key={photo.photoId} onPress={() => void onTake(photo)}>
          {photo.caption || `Photo ${index + 1}, no caption`}
        </Button>
      ))}
    </div>
  );
}
