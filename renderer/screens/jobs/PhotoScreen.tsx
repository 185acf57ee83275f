// One photo of a ticket, large: what it shows, which check it belongs to, whether the report carries it.
import { Link, useNavigate } from '@tanstack/react-router';
import { useEffect } from 'react';
import { partWords } from '../../../app/jobs/finding-words.ts';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import type { Photo } from '../../../app/photos/photos.contract.ts';
import { Button } from '../../components/Button.tsx';
import { Checkbox } from '../../components/Checkbox.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Select } from '../../components/Select.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { sayDayAndTime } from '../../text/say-date.ts';
import { useDraft } from '../../text/use-draft.ts';
import { LoadedJob } from './LoadedJob.tsx';
import { PhotoPicture } from './PhotoPicture.tsx';
import styles from './Photos.module.css';

export function PhotoScreen({ jobId, photoId }: { jobId: number; photoId: number }) {
  const read = useRead('photos.listPhotos', { jobId });
  return (
    <LoadedJob jobId={jobId}>
      {(job) => (
        <Loaded read={read}>{(photos) => <OnePhoto job={job} photos={photos.toReversed()} photoId={photoId} />}</Loaded>
      )}
    </LoadedJob>
  );
}

function OnePhoto({ job, photos, photoId }: { job: Job; photos: readonly Photo[]; photoId: number }) {
  const place = photos.findIndex((photo) => photo.photoId === photoId);
  const photo = photos[place];
  const params = { jobId: String(job.jobId) };
  useStepByArrow(job.jobId, photos[place - 1], photos[place + 1]);
  const toTicket = (
    <LinkKey to="/jobs/$jobId" params={params} kind="filled">
      To the ticket
    </LinkKey>
  );
  if (!photo) return <EmptyState title="This photo is not on the ticket any more." act={toTicket} />;
  return (
    <>
      <PageHead
        title={`Photo ${place + 1} of ${photos.length}`}
        facts={
          <>
            <Link to="/jobs/$jobId" params={params}>
              Job {job.number}
            </Link>
            <span className="quiet">
              {sayDayAndTime(photo.at)}, {photo.by}
            </span>
          </>
        }
        acts={
          <>
            <StepKey jobId={job.jobId} to={photos[place - 1]} words="Previous" keyHint="←" />
            <StepKey jobId={job.jobId} to={photos[place + 1]} words="Next" keyHint="→" />
          </>
        }
      />
      <div className={styles.page}>
        <PhotoPicture key={photo.photoId} photo={photo} size="full" />
        <AboutPhoto key={`about ${photo.photoId}`} job={job} photo={photo} />
      </div>
    </>
  );
}

function AboutPhoto({ job, photo }: { job: Job; photo: Photo }) {
  const { person } = useAtBench();
  const describe = useWrite('photos.describePhoto');
  const remove = useWrite('photos.removePhoto');
  const navigate = useNavigate();
  const caption = useDraft(`caption of photo ${photo.photoId}`, photo.caption);
  const { photoId, checkId, isInReport } = photo;
  const keep = (changed: Partial<Pick<Photo, 'caption' | 'checkId' | 'isInReport'>>) =>
    describe.mutate(
      { photoId, caption: photo.caption, checkId, isInReport, by: person.personId, ...changed },
      { onSuccess: () => changed.caption !== undefined && caption.clear() },
    );
  const takeOff = () =>
    remove.mutate(
      { photoId, by: person.personId },
      { onSuccess: () => void navigate({ to: '/jobs/$jobId/photos', params: { jobId: String(job.jobId) } }) },
    );
  return (
    <form
      className={styles.about}
      onSubmit={(event) => {
        event.preventDefault();
        keep({ caption: caption.value });
      }}
    >
      <TextField
        label="What it shows"
        value={caption.value}
        onChange={caption.change}
        placeholder="friction 2, burnt"
        isDisabled={job.isClosed}
      />
      {!job.isClosed && (
        <div className={styles.keys}>
          <Button kind="filled" type="submit" isDisabled={caption.value === photo.caption}>
            Keep the caption
          </Button>
        </div>
      )}
      <Select
        label="Pinned to"
        options={[
          { id: 0, words: 'the ticket' },
          ...job.checks.map((check) => ({ id: check.checkId, words: check.name })),
        ]}
        value={checkId ?? 0}
        onChange={(id) => keep({ checkId: id === 0 ? null : id })}
        isDisabled={job.isClosed}
      />
      <FindingsOfPhoto jobId={job.jobId} photoId={photoId} />
      <Checkbox isSelected={isInReport} onChange={(isOn) => keep({ isInReport: isOn })} isDisabled={job.isClosed}>
        The build report carries it
      </Checkbox>
      {!job.isClosed && (
        <div className={styles.keys}>
          <Button onPress={takeOff}>Take it off the ticket</Button>
        </div>
      )}
      <FailureSentence error={describe.error ?? remove.error} />
    </form>
  );
}

/** What teardown found that this photo shows; nothing where it shows none. */
function FindingsOfPhoto({ jobId, photoId }: { jobId: number; photoId: number }) {
  const { data: findings = [] } = useRead('jobs.listFindings', { jobId });
  const shown = findings.filter(({ photoIds }) => photoIds.includes(photoId));
  if (shown.length === 0) return null;
  return (
    <p>
      Shows{' '}
      <Link to="/jobs/$jobId/teardown" params={{ jobId: String(jobId) }}>
        {shown.map((finding) => `${partWords(finding)}, ${finding.condition}`).join('; ')}
      </Link>
    </p>
  );
}

function StepKey({
  jobId,
  to,
  words,
  keyHint,
}: {
  jobId: number;
  to: Photo | undefined;
  words: string;
  keyHint: string;
}) {
  if (!to) return null;
  return (
    <LinkKey
      to="/jobs/$jobId/photos/$photoId"
      params={{ jobId: String(jobId), photoId: String(to.photoId) }}
      keyHint={keyHint}
      replace
    >
      {words}
    </LinkKey>
  );
}

/** ← and → step through the photos while nothing is being typed. */
function useStepByArrow(jobId: number, before: Photo | undefined, after: Photo | undefined): void {
  const navigate = useNavigate();
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.target instanceof Element && event.target.closest('input, button, [role="listbox"]')) return;
      const to = event.key === 'ArrowLeft' ? before : event.key === 'ArrowRight' ? after : undefined;
      if (!to) return;
      event.preventDefault();
      void navigate({
        to: '/jobs/$jobId/photos/$photoId',
        params: { jobId: String(jobId), photoId: String(to.photoId) },
        replace: true,
      });
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [jobId, before, after, navigate]);
}
