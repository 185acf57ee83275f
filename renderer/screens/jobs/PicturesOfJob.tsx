// The pictures of a job's sheet, with the newest number or tick of every point on the picture; the list beside each
// says the same, and is how the keyboard and the screen reader go about it.
import { Link, useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import type { MarkedPoint } from '../../../app/charts/picture-points.ts';
import type { CheckOfJob, Job } from '../../../app/jobs/jobs.contract.ts';
import type { LineOfJob, ListOfJob } from '../../../app/jobs/lists.contract.ts';
import type { Settings } from '../../../app/shop/shop.contract.ts';
import type { SavedPicture } from '../../../app/specs/specs.contract.ts';
import { swappedSides } from '../../../app/specs/swapped-sides.ts';
import { Button } from '../../components/Button.tsx';
import { Notice } from '../../components/Notice.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { Verdict } from '../../components/Verdict.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PointsOnPicture } from '../../pictures/PointsOnPicture.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { amountWords } from '../../text/amount-words.ts';
import styles from './PicturesOfJob.module.css';
import { saidVerdict } from './standing-words.ts';

/** All of them, or those with a port or a line of the build. */
export function PicturesOfJob({ job, isOfBuild = false }: { job: Job; isOfBuild?: boolean }) {
  const { jobId, unit, revisionNumber } = job;
  const revision = useRead('specs.getRevision', { familyId: unit.familyId, number: revisionNumber });
  const lists = useRead('jobs.listListsOfJob', { jobId });
  const all = revision.data?.pictures ?? [];
  const pictures = isOfBuild ? picturesOfBuild(all, job.checks, lists.data ?? []) : all;
  if (pictures.length === 0) return <FailureSentence error={revision.error} />;
  return (
    <section className={styles.pictures} aria-labelledby="pictures-of-job">
      <h2 id="pictures-of-job" className={styles.heading}>
        Pictures
      </h2>
      {swappedSides(pictures).map((sentence) => (
        <Notice key={sentence}>{sentence}</Notice>
      ))}
      <FailureSentence error={lists.error} />
      {pictures.map((picture) => (
        <PictureOfJob
          key={picture.pictureId}
          job={job}
          picture={picture}
          lines={(lists.data ?? []).flatMap((list) => list.lines)}
        />
      ))}
    </section>
  );
}

function picturesOfBuild(
  pictures: readonly SavedPicture[],
  checks: readonly CheckOfJob[],
  lists: readonly ListOfJob[],
): readonly SavedPicture[] {
  const ports = checks.filter(({ method }) => method === 'drop').map(({ checkId }) => checkId);
  const lines = lists.filter(({ when }) => when === 'build').flatMap((list) => list.lines.map(({ lineId }) => lineId));
  return pictures.filter(({ points }) =>
    points.some(
      ({ checkId, lineId }) =>
        (checkId !== null && ports.includes(checkId)) || (lineId !== null && lines.includes(lineId)),
    ),
  );
}

type Point = SavedPicture['points'][number] & { check: CheckOfJob | undefined; line: LineOfJob | undefined };
type PictureOfJobProps = { job: Job; picture: SavedPicture; lines: readonly LineOfJob[] };

function PictureOfJob({ job, picture, lines }: PictureOfJobProps) {
  const { settings } = useOpenShop();
  const navigate = useNavigate();
  const tick = useTick(job);
  const [chosen, setChosen] = useState<number | null>(null);
  const points = picture.points.map((point) => ({
    ...point,
    check: job.checks.find(({ checkId }) => checkId === point.checkId),
    line: lines.find(({ lineId }) => lineId === point.lineId),
  }));
  const read = (checkId: number) =>
    void navigate({ to: '/bench/$jobId/$checkId', params: { jobId: String(job.jobId), checkId: String(checkId) } });
  const tap = ({ check, line }: Point) => {
    if (job.isClosed) return null;
    if (check) return () => read(check.checkId);
    return line?.asks.kind === 'tick' ? () => tick.press(line) : null;
  };
  return (
    <div className={styles.picture}>
      <PointsOnPicture
        picture={picture}
        points={points.map((point) => marked(point, settings))}
        chosen={chosen}
        onTap={(index) => tap(points[index]!)}
      />
      <div>
        <h3 className={styles.title}>{picture.title}</h3>
        <FailureSentence error={tick.error} />
        <Table label={picture.title}>
          <thead>
            <tr>
              <ColumnHead>point</ColumnHead>
              <ColumnHead>what</ColumnHead>
              <ColumnHead isNumber>newest</ColumnHead>
              <ColumnHead>stands</ColumnHead>
            </tr>
          </thead>
          <tbody>
            {points.map((point, index) => (
              <tr key={point.label} onFocus={() => setChosen(index)} onBlur={() => setChosen(null)}>
                <RowHead>{point.label}</RowHead>
                <Cell>
                  <What job={job} point={point} />
                </Cell>
                <Cell isNumber isStrong>
                  {figureOf(point, settings)}
                </Cell>
                <Cell>
                  <Stands point={point} onTick={job.isClosed ? null : tick.press} />
                </Cell>
              </tr>
            ))}
          </tbody>
        </Table>
      </div>
    </div>
  );
}

function What({ job, point }: { job: Job; point: Point }) {
  const { check, line, note } = point;
  const remark = note !== '' && <span className="small quiet"> {note}</span>;
  if (!check) {
    return (
      <>
        {line?.words}
        {remark}
      </>
    );
  }
  const params = { jobId: String(job.jobId), checkId: String(check.checkId) };
  return (
    <>
      <Link to={job.isClosed ? '/jobs/$jobId/checks/$checkId' : '/bench/$jobId/$checkId'} params={params}>
        {check.name}
      </Link>
      {remark}
    </>
  );
}

function Stands({ point, onTick }: { point: Point; onTick: ((line: LineOfJob) => void) | null }) {
  const { settings } = useOpenShop();
  const { check, line, label } = point;
  if (check) {
    const { mark, words } = saidVerdict(check.latest, check, settings);
    return <Verdict verdict={mark} words={words} />;
  }
  if (!line) return <span className="quiet">nothing to read</span>;
  if (line.asks.kind !== 'tick' || !onTick) return line.standing;
  const words = line.standing === 'good' ? 'Done' : line.standing === 'open' ? 'Tick' : `${line.standing}: tick`;
  return (
    <Button
      size="bench"
      // Begins with the words on it: who speaks to the machine says what is seen.
      aria-label={`${words}: ${label}, ${line.words}`}
      onPress={() => onTick(line)}
    >
      {words}
    </Button>
  );
}

/** Done; pressed again, not so. */
function useTick({ jobId }: Job) {
  const { person } = useAtBench();
  const answer = useWrite('jobs.answerLine');
  const press = ({ lineId, standing }: LineOfJob) => {
    // The next ball is ticked while the one before is still on its way; the same one is not ticked twice.
    if (answer.isPending && answer.variables?.lineId === lineId) return;
    const kind = standing === 'good' ? 'not so' : 'done';
    answer.mutate({ jobId, lineId, answer: { kind }, by: person.personId });
  };
  return { press, error: answer.error };
}

function figureOf({ check }: Point, settings: Settings): string {
  if (check?.latest?.value == null) return '';
  const words = amountWords(check, settings);
  return `${words.full(check.latest.value)} ${words.unit}`.trim();
}

function marked(point: Point, settings: Settings): MarkedPoint {
  const { check, line, label, x_permille, y_permille } = point;
  const place = { label, x_permille, y_permille };
  if (check) {
    const { mark } = saidVerdict(check.latest, check, settings);
    return { ...place, figure: figureOf(point, settings), mark: { kind: 'verdict', verdict: mark } };
  }
  return { ...place, figure: '', mark: line ? { kind: 'tick', state: line.standing } : { kind: 'none' } };
}
