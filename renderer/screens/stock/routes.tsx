// Which address shows which screen of the stock.
import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { brought } from '../../frame/brought.ts';
import { root } from '../../frame/root-route.ts';
import type { PlatesSide } from './PlatesScreen.tsx';

const EditPartScreen = lazyRouteComponent(() => import('./EditPartScreen.tsx'), 'EditPartScreen');
const ImportScreen = lazyRouteComponent(() => import('./ImportScreen.tsx'), 'ImportScreen');
const LabelsScreen = lazyRouteComponent(() => import('./LabelsScreen.tsx'), 'LabelsScreen');
const MeasureScreen = lazyRouteComponent(() => import('./MeasureScreen.tsx'), 'MeasureScreen');
const PartScreen = lazyRouteComponent(() => import('./PartScreen.tsx'), 'PartScreen');
const PartsScreen = lazyRouteComponent(() => import('./PartsScreen.tsx'), 'PartsScreen');
const PlatesScreen = lazyRouteComponent(() => import('./PlatesScreen.tsx'), 'PlatesScreen');
const ToBuyScreen = lazyRouteComponent(() => import('./ToBuyScreen.tsx'), 'ToBuyScreen');
const TraceScreen = lazyRouteComponent(() => import('./TraceScreen.tsx'), 'TraceScreen');

const parts = createRoute({ getParentRoute: () => root, path: '/stock', component: PartsScreen });
const newPart = createRoute({
  getParentRoute: () => root,
  path: '/stock/parts/new',
  component: brought(EditPartScreen, () => <EditPartScreen partId={null} />),
});
const part = createRoute({
  getParentRoute: () => root,
  path: '/stock/parts/$partId',
  component: brought(PartScreen, () => <PartScreen partId={Number(part.useParams().partId)} />),
});
const editPart = createRoute({
  getParentRoute: () => root,
  path: '/stock/parts/$partId/edit',
  component: brought(EditPartScreen, () => <EditPartScreen partId={Number(editPart.useParams().partId)} />),
});
const plates = createRoute({
  getParentRoute: () => root,
  path: '/stock/plates',
  component: brought(PlatesScreen, () => <PlatesScreen outline={null} side={{}} />),
});
const platesOfOutline = createRoute({
  getParentRoute: () => root,
  path: '/stock/plates/$outline',
  validateSearch: ({ plate, can }: { plate?: unknown; can?: unknown }): PlatesSide => ({
    ...(Number(plate) > 0 && { plate: Number(plate) }),
    ...(Number(can) > 0 && { can: Number(can) }),
  }),
  component: brought(PlatesScreen, () => (
    <PlatesScreen outline={platesOfOutline.useParams().outline} side={platesOfOutline.useSearch()} />
  )),
});
const measureBox = createRoute({
  getParentRoute: () => root,
  path: '/stock/plates/$outline/measure',
  component: brought(MeasureScreen, () => <MeasureScreen outline={measureBox.useParams().outline} />),
});
const toBuy = createRoute({ getParentRoute: () => root, path: '/stock/buy', component: ToBuyScreen });
const importLists = createRoute({ getParentRoute: () => root, path: '/stock/import', component: ImportScreen });
const trace = createRoute({
  getParentRoute: () => root,
  path: '/stock/trace/$kind/$id',
  component: brought(TraceScreen, () => {
    const { kind, id } = trace.useParams();
    return <TraceScreen kind={kind} id={Number(id)} />;
  }),
});
const labels = createRoute({
  getParentRoute: () => root,
  path: '/stock/labels',
  validateSearch: ({ of, copies }: { of?: unknown; copies?: unknown }): { of?: string; copies?: number } => ({
    ...(typeof of === 'string' && { of }),
    ...(Number(copies) > 0 && { copies: Number(copies) }),
  }),
  component: brought(LabelsScreen, () => {
    const { of = '', copies = 1 } = labels.useSearch();
    return <LabelsScreen of={of} copies={copies} />;
  }),
});

export const stockRoutes = [
  parts,
  newPart,
  part,
  editPart,
  plates,
  platesOfOutline,
  measureBox,
  toBuy,
  importLists,
  trace,
  labels,
] as const;
