// Which address shows which screen.
import { createHashHistory, createRootRoute, createRoute, createRouter, redirect } from '@tanstack/react-router';
import { EmptyState } from '../components/EmptyState.tsx';
import { BenchScreen } from '../screens/bench/BenchScreen.tsx';
import { ReadingScreen } from '../screens/bench/ReadingScreen.tsx';
import { UnitSwapsScreen } from '../screens/bench/UnitSwapsScreen.tsx';
import { ClutchScreen } from '../screens/clutch/ClutchScreen.tsx';
import { CallListPaperScreen } from '../screens/comebacks/CallListPaperScreen.tsx';
import { CameBackScreen } from '../screens/comebacks/CameBackScreen.tsx';
import { ComebackReportScreen } from '../screens/comebacks/ComebackReportScreen.tsx';
import { ComebackScreen } from '../screens/comebacks/ComebackScreen.tsx';
import { CostScreen } from '../screens/comebacks/CostScreen.tsx';
import { FleetScreen } from '../screens/comebacks/FleetScreen.tsx';
import { LogComebackScreen } from '../screens/comebacks/LogComebackScreen.tsx';
import { SharingScreen } from '../screens/comebacks/SharingScreen.tsx';
import { sharedAt } from '../screens/comebacks/shared-address.ts';
import { WhoToCallScreen } from '../screens/comebacks/WhoToCallScreen.tsx';
import { BuildsScreen } from '../screens/gauges/BuildsScreen.tsx';
import { EditGaugeScreen } from '../screens/gauges/EditGaugeScreen.tsx';
import { GaugeScreen } from '../screens/gauges/GaugeScreen.tsx';
import { GaugesScreen } from '../screens/gauges/GaugesScreen.tsx';
import { MethodsScreen } from '../screens/gauges/MethodsScreen.tsx';
import { NewStudyScreen } from '../screens/gauges/NewStudyScreen.tsx';
import { StudiesScreen } from '../screens/gauges/StudiesScreen.tsx';
import { StudyScreen } from '../screens/gauges/StudyScreen.tsx';
import { TouchedScreen } from '../screens/gauges/TouchedScreen.tsx';
import { LinesScreen } from '../screens/indicators/LinesScreen.tsx';
import { BuildScreen } from '../screens/jobs/BuildScreen.tsx';
import { CheckInScreen } from '../screens/jobs/CheckInScreen.tsx';
import { CheckScreen } from '../screens/jobs/CheckScreen.tsx';
import { DeliveryScreen } from '../screens/jobs/DeliveryScreen.tsx';
import { DoorScreen } from '../screens/jobs/DoorScreen.tsx';
import { EstimatePaperScreen } from '../screens/jobs/EstimatePaperScreen.tsx';
import { EstimateScreen } from '../screens/jobs/EstimateScreen.tsx';
import { FinalScreen } from '../screens/jobs/FinalScreen.tsx';
import { HistoryScreen } from '../screens/jobs/HistoryScreen.tsx';
import { JobScreen } from '../screens/jobs/JobScreen.tsx';
import { FamilySheetScreen, JobSheetScreen } from '../screens/jobs/JobSheetScreen.tsx';
import { JobsScreen } from '../screens/jobs/JobsScreen.tsx';
import { PapersScreen } from '../screens/jobs/PapersScreen.tsx';
import { PartsOfJobScreen } from '../screens/jobs/PartsOfJobScreen.tsx';
import { PhotoScreen } from '../screens/jobs/PhotoScreen.tsx';
import { PhotosOfJobScreen } from '../screens/jobs/PhotosOfJobScreen.tsx';
import { PullListScreen } from '../screens/jobs/PullListScreen.tsx';
import { ReportScreen } from '../screens/jobs/ReportScreen.tsx';
import { TeardownScreen } from '../screens/jobs/TeardownScreen.tsx';
import { ShopScreen } from '../screens/shop/ShopScreen.tsx';
import { EditSheetScreen } from '../screens/specs/EditSheetScreen.tsx';
import { FamiliesScreen } from '../screens/specs/FamiliesScreen.tsx';
import { SheetScreen } from '../screens/specs/SheetScreen.tsx';
import { SmallJobsScreen } from '../screens/specs/SmallJobsScreen.tsx';
import { EditPartScreen } from '../screens/stock/EditPartScreen.tsx';
import { ImportScreen } from '../screens/stock/ImportScreen.tsx';
import { LabelsScreen } from '../screens/stock/LabelsScreen.tsx';
import { MeasureScreen } from '../screens/stock/MeasureScreen.tsx';
import { PartScreen } from '../screens/stock/PartScreen.tsx';
import { PartsScreen } from '../screens/stock/PartsScreen.tsx';
import { PlatesScreen, type PlatesSide } from '../screens/stock/PlatesScreen.tsx';
import { ToBuyScreen } from '../screens/stock/ToBuyScreen.tsx';
import { TraceScreen } from '../screens/stock/TraceScreen.tsx';
import { ErrorScreen } from './ErrorScreen.tsx';
import { Frame } from './Frame.tsx';

const root = createRootRoute({ component: Frame });

const home = createRoute({
  getParentRoute: () => root,
  path: '/',
  beforeLoad: () => {
    throw redirect({ to: '/jobs' });
  },
});

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
const clutch = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/clutch/$packId',
  component: () => {
    const { jobId, packId } = clutch.useParams();
    return <ClutchScreen jobId={Number(jobId)} packId={Number(packId)} />;
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
const smallJobs = createRoute({
  getParentRoute: () => root,
  path: '/specs/$familyId/small-jobs',
  component: () => <SmallJobsScreen familyId={Number(smallJobs.useParams().familyId)} />,
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

const bench = createRoute({
  getParentRoute: () => root,
  path: '/bench',
  validateSearch: ({ unit }: { unit?: unknown }): { unit?: number } => (Number(unit) > 0 ? { unit: Number(unit) } : {}),
  component: () => <BenchScreen unit={bench.useSearch().unit ?? null} />,
});
const reading = createRoute({
  getParentRoute: () => root,
  path: '/bench/$jobId/$checkId',
  component: () => {
    const { jobId, checkId } = reading.useParams();
    return <ReadingScreen jobId={Number(jobId)} checkId={Number(checkId)} />;
  },
});

const swapsOfUnit = createRoute({
  getParentRoute: () => root,
  path: '/bench/$jobId/swaps',
  component: () => <UnitSwapsScreen jobId={Number(swapsOfUnit.useParams().jobId)} />,
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

const lines = createRoute({ getParentRoute: () => root, path: '/lines', component: LinesScreen });

const parts = createRoute({ getParentRoute: () => root, path: '/stock', component: PartsScreen });
const newPart = createRoute({
  getParentRoute: () => root,
  path: '/stock/parts/new',
  component: () => <EditPartScreen partId={null} />,
});
const part = createRoute({
  getParentRoute: () => root,
  path: '/stock/parts/$partId',
  component: () => <PartScreen partId={Number(part.useParams().partId)} />,
});
const editPart = createRoute({
  getParentRoute: () => root,
  path: '/stock/parts/$partId/edit',
  component: () => <EditPartScreen partId={Number(editPart.useParams().partId)} />,
});

const plates = createRoute({
  getParentRoute: () => root,
  path: '/stock/plates',
  component: () => <PlatesScreen outline={null} side={{}} />,
});
const platesOfOutline = createRoute({
  getParentRoute: () => root,
  path: '/stock/plates/$outline',
  validateSearch: ({ plate, can }: { plate?: unknown; can?: unknown }): PlatesSide => ({
    ...(Number(plate) > 0 && { plate: Number(plate) }),
    ...(Number(can) > 0 && { can: Number(can) }),
  }),
  component: () => <PlatesScreen outline={platesOfOutline.useParams().outline} side={platesOfOutline.useSearch()} />,
});
const measureBox = createRoute({
  getParentRoute: () => root,
  path: '/stock/plates/$outline/measure',
  component: () => <MeasureScreen outline={measureBox.useParams().outline} />,
});

const toBuy = createRoute({ getParentRoute: () => root, path: '/stock/buy', component: ToBuyScreen });
const importLists = createRoute({ getParentRoute: () => root, path: '/stock/import', component: ImportScreen });
const trace = createRoute({
  getParentRoute: () => root,
  path: '/stock/trace/$kind/$id',
  component: () => {
    const { kind, id } = trace.useParams();
    return <TraceScreen kind={kind} id={Number(id)} />;
  },
});
const labels = createRoute({
  getParentRoute: () => root,
  path: '/stock/labels',
  validateSearch: ({ of, copies }: { of?: unknown; copies?: unknown }): { of?: string; copies?: number } => ({
    ...(typeof of === 'string' && { of }),
    ...(Number(copies) > 0 && { copies: Number(copies) }),
  }),
  component: () => {
    const { of = '', copies = 1 } = labels.useSearch();
    return <LabelsScreen of={of} copies={copies} />;
  },
});

const comebacks = createRoute({ getParentRoute: () => root, path: '/comebacks', component: CameBackScreen });
const logComeback = createRoute({
  getParentRoute: () => root,
  path: '/comebacks/new',
  validateSearch: ({ of, ticket }: { of?: unknown; ticket?: unknown }): { of?: number; ticket?: number } => ({
    ...(Number(of) > 0 && { of: Number(of) }),
    ...(Number(ticket) > 0 && { ticket: Number(ticket) }),
  }),
  component: () => {
    const { of = null, ticket = null } = logComeback.useSearch();
    return <LogComebackScreen of={of} ticket={ticket} />;
  },
});
const comeback = createRoute({
  getParentRoute: () => root,
  path: '/comebacks/$comebackId',
  component: () => <ComebackScreen comebackId={Number(comeback.useParams().comebackId)} />,
});
const comebackReport = createRoute({
  getParentRoute: () => root,
  path: '/comebacks/$comebackId/report/$copy',
  component: () => {
    const { comebackId, copy } = comebackReport.useParams();
    return <ComebackReportScreen comebackId={Number(comebackId)} copy={copy === 'shop' ? 'shop' : 'customer'} />;
  },
});

const fleet = createRoute({ getParentRoute: () => root, path: '/comebacks/fleet', component: FleetScreen });
const costOfComebacks = createRoute({ getParentRoute: () => root, path: '/comebacks/cost', component: CostScreen });
const whoToCall = createRoute({ getParentRoute: () => root, path: '/comebacks/calls', component: WhoToCallScreen });
const callListPaper = createRoute({
  getParentRoute: () => root,
  path: '/comebacks/calls/paper',
  component: CallListPaperScreen,
});
const askWhatIsShared = createRoute({
  getParentRoute: () => root,
  path: '/comebacks/sharing',
  component: () => <SharingScreen of={null} />,
});
const sharing = createRoute({
  getParentRoute: () => root,
  path: '/comebacks/sharing/$kind/$id',
  component: () => {
    const { kind, id } = sharing.useParams();
    return <SharingScreen of={sharedAt(kind, Number(id))} />;
  },
});

const specs = createRoute({ getParentRoute: () => root, path: '/specs', component: FamiliesScreen });
const sheet = createRoute({
  getParentRoute: () => root,
  path: '/specs/$familyId',
  component: () => <SheetScreen familyId={Number(sheet.useParams().familyId)} />,
});
const earlierSheet = createRoute({
  getParentRoute: () => root,
  path: '/specs/$familyId/revision/$number',
  component: () => {
    const { familyId, number } = earlierSheet.useParams();
    return <SheetScreen familyId={Number(familyId)} number={Number(number)} />;
  },
});
const editSheet = createRoute({
  getParentRoute: () => root,
  path: '/specs/$familyId/edit',
  component: () => <EditSheetScreen familyId={Number(editSheet.useParams().familyId)} />,
});

const gauges = createRoute({ getParentRoute: () => root, path: '/gauges', component: GaugesScreen });
const newGauge = createRoute({
  getParentRoute: () => root,
  path: '/gauges/new',
  component: () => <EditGaugeScreen gaugeId={null} />,
});
const gauge = createRoute({
  getParentRoute: () => root,
  path: '/gauges/$gaugeId',
  component: () => <GaugeScreen gaugeId={Number(gauge.useParams().gaugeId)} />,
});
const touched = createRoute({
  getParentRoute: () => root,
  path: '/gauges/touched/$gaugeCheckId',
  component: () => <TouchedScreen gaugeCheckId={Number(touched.useParams().gaugeCheckId)} />,
});
const studies = createRoute({ getParentRoute: () => root, path: '/gauges/studies', component: StudiesScreen });
const newStudy = createRoute({ getParentRoute: () => root, path: '/gauges/studies/new', component: NewStudyScreen });
const study = createRoute({
  getParentRoute: () => root,
  path: '/gauges/studies/$studyId',
  component: () => <StudyScreen studyId={Number(study.useParams().studyId)} />,
});
const twoMethods = createRoute({ getParentRoute: () => root, path: '/gauges/methods', component: MethodsScreen });
const overBuilds = createRoute({ getParentRoute: () => root, path: '/gauges/builds', component: BuildsScreen });
const editGauge = createRoute({
  getParentRoute: () => root,
  path: '/gauges/$gaugeId/edit',
  component: () => <EditGaugeScreen gaugeId={Number(editGauge.useParams().gaugeId)} />,
});

const shop = createRoute({ getParentRoute: () => root, path: '/shop', component: ShopScreen });

export const router = createRouter({
  routeTree: root.addChildren([
    home,
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
    clutch,
    estimate,
    estimatePaper,
    history,
    jobSheet,
    smallJobs,
    familySheet,
    report,
    photo,
    bench,
    reading,
    swapsOfUnit,
    pullList,
    lines,
    parts,
    newPart,
    part,
    editPart,
    toBuy,
    importLists,
    trace,
    labels,
    plates,
    platesOfOutline,
    measureBox,
    comebacks,
    fleet,
    logComeback,
    comeback,
    comebackReport,
    costOfComebacks,
    whoToCall,
    callListPaper,
    askWhatIsShared,
    sharing,
    specs,
    sheet,
    earlierSheet,
    editSheet,
    gauges,
    newGauge,
    gauge,
    editGauge,
    touched,
    studies,
    newStudy,
    study,
    twoMethods,
    overBuilds,
    shop,
  ]),
  // Under app:// and on the loopback host alike there is one page; the address is what follows #.
  history: createHashHistory(),
  defaultErrorComponent: ErrorScreen,
  defaultNotFoundComponent: () => (
    <EmptyState title="There is nothing at this address.">Choose a place on the left.</EmptyState>
  ),
});

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}
