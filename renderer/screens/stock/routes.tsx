// Which address shows which screen of the stock.
import { createRoute } from '@tanstack/react-router';
import { root } from '../../frame/root-route.ts';
import { EditPartScreen } from './EditPartScreen.tsx';
import { ImportScreen } from './ImportScreen.tsx';
import { LabelsScreen } from './LabelsScreen.tsx';
import { MeasureScreen } from './MeasureScreen.tsx';
import { PartScreen } from './PartScreen.tsx';
import { PartsScreen } from './PartsScreen.tsx';
import type { PlatesSide } from './PlatesScreen.tsx';
import { PlatesScreen } from './PlatesScreen.tsx';
import { ToBuyScreen } from './ToBuyScreen.tsx';
import { TraceScreen } from './TraceScreen.tsx';

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
