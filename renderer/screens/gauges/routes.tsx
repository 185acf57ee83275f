// Which address shows which screen of the gauges.
import { createRoute } from '@tanstack/react-router';
import { root } from '../../frame/root-route.ts';

import { BuildsScreen } from './BuildsScreen.tsx';
import { EditGaugeScreen } from './EditGaugeScreen.tsx';
import { GaugeScreen } from './GaugeScreen.tsx';
import { GaugesScreen } from './GaugesScreen.tsx';
import { MethodsScreen } from './MethodsScreen.tsx';
import { NewStudyScreen } from './NewStudyScreen.tsx';
import { StudiesScreen } from './StudiesScreen.tsx';
import { StudyScreen } from './StudyScreen.tsx';
import { TouchedScreen } from './TouchedScreen.tsx';

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
