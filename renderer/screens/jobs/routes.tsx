// Which address shows which screen of a ticket and its papers.
import { createRoute } from '@tanstack/react-router';
import { root } from '../../frame/root-route.ts';

import { BuildScreen } from './BuildScreen.tsx';
import { CheckInScreen } from './CheckInScreen.tsx';
import { CheckScreen } from './CheckScreen.tsx';
import { DeliveryScreen } from './DeliveryScreen.tsx';
import { DoorScreen } from './DoorScreen.tsx';
import { EstimatePaperScreen } from './EstimatePaperScreen.tsx';
import { EstimateScreen } from './EstimateScreen.tsx';
import { FinalScreen } from './FinalScreen.tsx';
import { HistoryScreen } from './HistoryScreen.tsx';
import { JobScreen } from './JobScreen.tsx';
import { FamilySheetScreen, JobSheetScreen } from './JobSheetScreen.tsx';
import { JobsScreen } from './JobsScreen.tsx';
import { PapersScreen } from './PapersScreen.tsx';
import { PartsOfJobScreen } from './PartsOfJobScreen.tsx';
import { PhotoScreen } from './PhotoScreen.tsx';
import { PhotosOfJobScreen } from './PhotosOfJobScreen.tsx';
import { PullListScreen } from './PullListScreen.tsx';
import { ReportScreen } from './ReportScreen.tsx';
import { TeardownScreen } from './TeardownScreen.tsx';

const jobs = createRoute({ getParentRoute: () => root, path: '/jobs', component: JobsScreen });
const checkIn = createRoute({ getParentRoute: () => root, path: '/jobs/new', component: CheckInScreen });
const job = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId',
  component: () => <JobScreen jobId={Number(job.useParams().jobId)} />,
});
const door = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/door',
  component: () => <DoorScreen jobId={Number(door.useParams().jobId)} />,
});
const partsOfJob = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/parts',
  validateSearch: ({ find }: { find?: unknown }): { find?: string } => (typeof find === 'string' ? { find } : {}),
  component: () => (
    <PartsOfJobScreen jobId={Number(partsOfJob.useParams().jobId)} find={partsOfJob.useSearch().find ?? ''} />
  ),
});
const teardown = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/teardown',
  component: () => <TeardownScreen jobId={Number(teardown.useParams().jobId)} />,
});
const photosOfJob = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/photos',
  component: () => <PhotosOfJobScreen jobId={Number(photosOfJob.useParams().jobId)} />,
});
const build = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/build',
  component: () => <BuildScreen jobId={Number(build.useParams().jobId)} />,
});
const final = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/final',
  component: () => <FinalScreen jobId={Number(final.useParams().jobId)} />,
});
const delivery = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/delivery',
  component: () => <DeliveryScreen jobId={Number(delivery.useParams().jobId)} />,
});
const papers = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/papers',
  component: () => <PapersScreen jobId={Number(papers.useParams().jobId)} />,
});
const checkOfJob = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/checks/$checkId',
  component: () => {
    const { jobId, checkId } = checkOfJob.useParams();
    return <CheckScreen jobId={Number(jobId)} checkId={Number(checkId)} />;
  },
});
const estimate = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/estimate',
  component: () => <EstimateScreen jobId={Number(estimate.useParams().jobId)} />,
});
const estimatePaper = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/estimate/$number',
  component: () => {
    const { jobId, number } = estimatePaper.useParams();
    return <EstimatePaperScreen jobId={Number(jobId)} number={Number(number)} />;
  },
});
const history = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/history',
  component: () => <HistoryScreen jobId={Number(history.useParams().jobId)} />,
});
const jobSheet = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/sheet/$kind',
  component: () => {
    const { jobId, kind } = jobSheet.useParams();
    return <JobSheetScreen jobId={Number(jobId)} kind={kind === 'bench' ? 'bench' : 'build'} />;
  },
});
const familySheet = createRoute({
  getParentRoute: () => root,
  path: '/specs/$familyId/bench-sheet',
  component: () => <FamilySheetScreen familyId={Number(familySheet.useParams().familyId)} />,
});
const report = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/report/$copy',
  component: () => {
    const { jobId, copy } = report.useParams();
    return <ReportScreen jobId={Number(jobId)} copy={copy === 'shop' ? 'shop' : 'customer'} />;
  },
});
const photo = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/photos/$photoId',
  component: () => {
    const { jobId, photoId } = photo.useParams();
    return <PhotoScreen jobId={Number(jobId)} photoId={Number(photoId)} />;
  },
});
const pullList = createRoute({
  getParentRoute: () => root,
  path: '/bench/$jobId/pull/$way/$objective',
  component: () => {
    const { jobId, way, objective } = pullList.useParams();
    return (
      <PullListScreen
        jobId={Number(jobId)}
        way={way === 'together' ? 'together' : 'inOrder'}
        objective={objective === 'largest' ? 'largest' : 'sum'}
      />
    );
  },
});

export const jobsRoutes = [
  jobs,
  checkIn,
  job,
  door,
  partsOfJob,
  teardown,
  photosOfJob,
  build,
  final,
  delivery,
  papers,
  checkOfJob,
  estimate,
  estimatePaper,
  history,
  jobSheet,
  familySheet,
  report,
  photo,
  pullList,
] as const;
