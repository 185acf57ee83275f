// Which address shows which screen of a ticket and its papers.
import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { brought } from '../../frame/brought.ts';
import { root } from '../../frame/root-route.ts';

const BuildScreen = lazyRouteComponent(() => import('./BuildScreen.tsx'), 'BuildScreen');
const CheckInScreen = lazyRouteComponent(() => import('./CheckInScreen.tsx'), 'CheckInScreen');
const CheckScreen = lazyRouteComponent(() => import('./CheckScreen.tsx'), 'CheckScreen');
const DeliveryScreen = lazyRouteComponent(() => import('./DeliveryScreen.tsx'), 'DeliveryScreen');
const DoorScreen = lazyRouteComponent(() => import('./DoorScreen.tsx'), 'DoorScreen');
const EstimatePaperScreen = lazyRouteComponent(() => import('./EstimatePaperScreen.tsx'), 'EstimatePaperScreen');
const EstimateScreen = lazyRouteComponent(() => import('./EstimateScreen.tsx'), 'EstimateScreen');
const FinalScreen = lazyRouteComponent(() => import('./FinalScreen.tsx'), 'FinalScreen');
const HistoryScreen = lazyRouteComponent(() => import('./HistoryScreen.tsx'), 'HistoryScreen');
const JobScreen = lazyRouteComponent(() => import('./JobScreen.tsx'), 'JobScreen');
const FamilySheetScreen = lazyRouteComponent(() => import('./JobSheetScreen.tsx'), 'FamilySheetScreen');
const JobSheetScreen = lazyRouteComponent(() => import('./JobSheetScreen.tsx'), 'JobSheetScreen');
const JobsScreen = lazyRouteComponent(() => import('./JobsScreen.tsx'), 'JobsScreen');
const PapersScreen = lazyRouteComponent(() => import('./PapersScreen.tsx'), 'PapersScreen');
const PartsOfJobScreen = lazyRouteComponent(() => import('./PartsOfJobScreen.tsx'), 'PartsOfJobScreen');
const PhotoScreen = lazyRouteComponent(() => import('./PhotoScreen.tsx'), 'PhotoScreen');
const PhotosOfJobScreen = lazyRouteComponent(() => import('./PhotosOfJobScreen.tsx'), 'PhotosOfJobScreen');
const PullListScreen = lazyRouteComponent(() => import('./PullListScreen.tsx'), 'PullListScreen');
const ReportScreen = lazyRouteComponent(() => import('./ReportScreen.tsx'), 'ReportScreen');
const TeardownScreen = lazyRouteComponent(() => import('./TeardownScreen.tsx'), 'TeardownScreen');

const jobs = createRoute({ getParentRoute: () => root, path: '/jobs', component: JobsScreen });
const checkIn = createRoute({ getParentRoute: () => root, path: '/jobs/new', component: CheckInScreen });
const job = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId',
  component: brought(JobScreen, () => <JobScreen jobId={Number(job.useParams().jobId)} />),
});
const door = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/door',
  component: brought(DoorScreen, () => <DoorScreen jobId={Number(door.useParams().jobId)} />),
});
const partsOfJob = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/parts',
  validateSearch: ({ find }: { find?: unknown }): { find?: string } => (typeof find === 'string' ? { find } : {}),
  component: brought(PartsOfJobScreen, () => (
    <PartsOfJobScreen jobId={Number(partsOfJob.useParams().jobId)} find={partsOfJob.useSearch().find ?? ''} />
  )),
});
const teardown = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/teardown',
  component: brought(TeardownScreen, () => <TeardownScreen jobId={Number(teardown.useParams().jobId)} />),
});
const photosOfJob = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/photos',
  component: brought(PhotosOfJobScreen, () => <PhotosOfJobScreen jobId={Number(photosOfJob.useParams().jobId)} />),
});
const build = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/build',
  component: brought(BuildScreen, () => <BuildScreen jobId={Number(build.useParams().jobId)} />),
});
const final = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/final',
  component: brought(FinalScreen, () => <FinalScreen jobId={Number(final.useParams().jobId)} />),
});
const delivery = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/delivery',
  component: brought(DeliveryScreen, () => <DeliveryScreen jobId={Number(delivery.useParams().jobId)} />),
});
const papers = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/papers',
  component: brought(PapersScreen, () => <PapersScreen jobId={Number(papers.useParams().jobId)} />),
});
const checkOfJob = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/checks/$checkId',
  component: brought(CheckScreen, () => {
    const { jobId, checkId } = checkOfJob.useParams();
    return <CheckScreen jobId={Number(jobId)} checkId={Number(checkId)} />;
  }),
});
const estimate = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/estimate',
  component: brought(EstimateScreen, () => <EstimateScreen jobId={Number(estimate.useParams().jobId)} />),
});
const estimatePaper = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/estimate/$number',
  component: brought(EstimatePaperScreen, () => {
    const { jobId, number } = estimatePaper.useParams();
    return <EstimatePaperScreen jobId={Number(jobId)} number={Number(number)} />;
  }),
});
const history = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/history',
  component: brought(HistoryScreen, () => <HistoryScreen jobId={Number(history.useParams().jobId)} />),
});
const jobSheet = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/sheet/$kind',
  component: brought(JobSheetScreen, () => {
    const { jobId, kind } = jobSheet.useParams();
    return <JobSheetScreen jobId={Number(jobId)} kind={kind === 'bench' ? 'bench' : 'build'} />;
  }),
});
const familySheet = createRoute({
  getParentRoute: () => root,
  path: '/specs/$familyId/bench-sheet',
  component: brought(FamilySheetScreen, () => (
    <FamilySheetScreen familyId={Number(familySheet.useParams().familyId)} />
  )),
});
const report = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/report/$copy',
  component: brought(ReportScreen, () => {
    const { jobId, copy } = report.useParams();
    return <ReportScreen jobId={Number(jobId)} copy={copy === 'shop' ? 'shop' : 'customer'} />;
  }),
});
const photo = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/photos/$photoId',
  component: brought(PhotoScreen, () => {
    const { jobId, photoId } = photo.useParams();
    return <PhotoScreen jobId={Number(jobId)} photoId={Number(photoId)} />;
  }),
});
const pullList = createRoute({
  getParentRoute: () => root,
  path: '/bench/$jobId/pull/$way/$objective',
  component: brought(PullListScreen, () => {
    const { jobId, way, objective } = pullList.useParams();
    return (
      <PullListScreen
        jobId={Number(jobId)}
        way={way === 'together' ? 'together' : 'inOrder'}
        objective={objective === 'largest' ? 'largest' : 'sum'}
      />
    );
  }),
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
