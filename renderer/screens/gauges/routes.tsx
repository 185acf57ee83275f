// Which address shows which screen of the gauges.
import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { brought } from '../../frame/brought.ts';
import { root } from '../../frame/root-route.ts';

const BuildsScreen = lazyRouteComponent(() => import('./BuildsScreen.tsx'), 'BuildsScreen');
const EditGaugeScreen = lazyRouteComponent(() => import('./EditGaugeScreen.tsx'), 'EditGaugeScreen');
const GaugeScreen = lazyRouteComponent(() => import('./GaugeScreen.tsx'), 'GaugeScreen');
const GaugesScreen = lazyRouteComponent(() => import('./GaugesScreen.tsx'), 'GaugesScreen');
const MethodsScreen = lazyRouteComponent(() => import('./MethodsScreen.tsx'), 'MethodsScreen');
const NewStudyScreen = lazyRouteComponent(() => import('./NewStudyScreen.tsx'), 'NewStudyScreen');
const StudiesScreen = lazyRouteComponent(() => import('./StudiesScreen.tsx'), 'StudiesScreen');
const StudyScreen = lazyRouteComponent(() => import('./StudyScreen.tsx'), 'StudyScreen');
const TouchedScreen = lazyRouteComponent(() => import('./TouchedScreen.tsx'), 'TouchedScreen');

const gauges = createRoute({ getParentRoute: () => root, path: '/gauges', component: GaugesScreen });
const newGauge = createRoute({
  getParentRoute: () => root,
  path: '/gauges/new',
  component: brought(EditGaugeScreen, () => <EditGaugeScreen gaugeId={null} />),
});
const gauge = createRoute({
  getParentRoute: () => root,
  path: '/gauges/$gaugeId',
  component: brought(GaugeScreen, () => <GaugeScreen gaugeId={Number(gauge.useParams().gaugeId)} />),
});
const touched = createRoute({
  getParentRoute: () => root,
  path: '/gauges/touched/$gaugeCheckId',
  component: brought(TouchedScreen, () => <TouchedScreen gaugeCheckId={Number(touched.useParams().gaugeCheckId)} />),
});
const studies = createRoute({ getParentRoute: () => root, path: '/gauges/studies', component: StudiesScreen });
const newStudy = createRoute({ getParentRoute: () => root, path: '/gauges/studies/new', component: NewStudyScreen });
const study = createRoute({
  getParentRoute: () => root,
  path: '/gauges/studies/$studyId',
  component: brought(StudyScreen, () => <StudyScreen studyId={Number(study.useParams().studyId)} />),
});
const twoMethods = createRoute({ getParentRoute: () => root, path: '/gauges/methods', component: MethodsScreen });
const overBuilds = createRoute({ getParentRoute: () => root, path: '/gauges/builds', component: BuildsScreen });
const editGauge = createRoute({
  getParentRoute: () => root,
  path: '/gauges/$gaugeId/edit',
  component: brought(EditGaugeScreen, () => <EditGaugeScreen gaugeId={Number(editGauge.useParams().gaugeId)} />),
});

export const gaugesRoutes = [
  gauges,
  newGauge,
  gauge,
  touched,
  studies,
  newStudy,
  study,
  twoMethods,
  overBuilds,
  editGauge,
] as const;
