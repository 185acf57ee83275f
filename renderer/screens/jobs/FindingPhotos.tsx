// The photos of a finding: chosen from those of the ticket, or taken in right here.
import { Link } from '@tanstack/react-router';
import { partWords } from '../../../app/jobs/finding-words.ts';
import type { Finding } from '../../../app/jobs/findings.contract.ts';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import type { Photo } from '../../../app/photos/photos.contract.ts';
import { Checkbox } from '../../components/Checkbox.tsx';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { sayDayAndTime } from '../../text/say-date.ts';
import { AddPhotos } from './AddPhotos.tsx';
import { PhotoPicture } from './PhotoPicture.tsx';
import styles from './Teardown.module.css';

export function FindingPhotos({ job, finding }: { job: Job; finding: Finding }) {
  const photos = useRead('photos.listPhotos', { jobId: job.jobId });
  const pinned = (photos.data ?? []).filter((photo) => finding.photoIds.includes(photo.photoId));
  return (
    <span className={styles.pinned}>
      {pinned.map((photo) => (
        <Link
          key={photo.photoId}
          to="/jobs/$jobId/photos/$photoId"
          params={{ jobId: String(job.jobId), photoId: String(photo.photoId) }}
        >
          <PhotoPicture photo={photo} size="small" />
        </Link>
      ))}
      {!job.isClosed && (
        <PopoverDialog words="Photos…" title="Photos" aria-label={`Photos of ${partWords(finding)}`}>
          <ChoosePhotos job={job} finding={finding} photos={photos.data ?? []} />
        </PopoverDialog>
      )}
    </span>
  );
}

function ChoosePhotos({ job, finding, photos }: { job: Job; finding: Finding; photos: readonly Photo[] }) {
  const { person } = useAtBench();
  const write = useWrite('jobs.pinPhoto');
  const pin = (photoId: number, isPinned: boolean) =>
    write.mutate({ findingId: finding.findingId, photoId, isPinned, by: person.personId });
  return (
    <div className={styles.choose}>
      {photos.length > 0 && (
        <ul className={styles.offered}>
          {photos.map((photo) => (
            <li key={photo.photoId}>
              <PhotoPicture photo={photo} size="small" />
              <Checkbox
                isSelected={finding.photoIds.includes(photo.photoId)}
                onChange={(isOn) => pin(photo.photoId, isOn)}
              >
                {photo.caption || sayDayAndTime(photo.at)}
              </Checkbox>
            </li>
          ))}
        </ul>
      )}
      <AddPhotos jobId={job.jobId} onKept={(photoId) => pin(photoId, true)} />
      <FailureSentence error={write.error} />
    </div>
  );
}
