// The photo strip at the foot of a ticket.
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { Button } from '../../components/Button.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { sayDay } from '../../text/say-date.ts';
import { AddPhotos } from './AddPhotos.tsx';
import { PhotoPicture } from './PhotoPicture.tsx';
import styles from './Photos.module.css';

/** A ticket may carry hundreds. */
const photosAtATime = 60;

export function PhotosOfJob({ job }: { job: Job }) {
  const { jobId } = job;
  const read = useRead('photos.listPhotos', { jobId });
  const [shown, setShown] = useState(photosAtATime);
  const photos = (read.data ?? []).toReversed();
  return (
    <section className={styles.strip} aria-labelledby="photos-of-job">
      <h2 id="photos-of-job" className={styles.heading}>
        Photos
      </h2>
      <FailureSentence error={read.error} />
      <ul className={styles.photos}>
        {!job.isClosed && (
          <li>
            <AddPhotos jobId={jobId} />
          </li>
        )}
        {photos.slice(0, shown).map((photo) => (
          <li key={photo.photoId}>
            <Link
              to="/jobs/$jobId/photos/$photoId"
              params={{ jobId: String(jobId), photoId: String(photo.photoId) }}
              className={styles.link}
            >
              <PhotoPicture photo={photo} size="small" />
              <span className={styles.caption}>{photo.caption || 'No caption'}</span>
              <span className="small quiet">
                {sayDay(photo.at)}
                {photo.isInReport && ', in the report'}
              </span>
            </Link>
          </li>
        ))}
      </ul>
      {photos.length > shown && (
        <div>
          <Button onPress={() => setShown(shown + photosAtATime)}>
            {`Show ${Math.min(photosAtATime, photos.length - shown)} more of ${photos.length}`}
          </Button>
        </div>
      )}
      {job.isClosed && read.data?.length === 0 && <p className="quiet">No photos were kept with this ticket.</p>}
    </section>
  );
}
