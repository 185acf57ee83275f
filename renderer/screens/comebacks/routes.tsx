// Which address shows which screen of comebacks and the fleet.
import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { brought } from '../../frame/brought.ts';
import { root } from '../../frame/root-route.ts';
import { sharedAt } from './shared-address.ts';

const CallListPaperScreen = lazyRouteComponent(() => import('./CallListPaperScreen.tsx'), 'CallListPaperScreen');
const CameBackScreen = lazyRouteComponent(() => import('./CameBackScreen.tsx'), 'CameBackScreen');
const ComebackReportScreen = lazyRouteComponent(() => import('./ComebackReportScreen.tsx'), 'ComebackReportScreen');
const ComebackScreen = lazyRouteComponent(() => import('./ComebackScreen.tsx'), 'ComebackScreen');
const CostScreen = lazyRouteComponent(() => import('./CostScreen.tsx'), 'CostScreen');
const FleetScreen = lazyRouteComponent(() => import('./FleetScreen.tsx'), 'FleetScreen');
const LogComebackScreen = lazyRouteComponent(() => import('./LogComebackScreen.tsx'), 'LogComebackScreen');
const SharingScreen = lazyRouteComponent(() => import('./SharingScreen.tsx'), 'SharingScreen');
const WhoToCallScreen = lazyRouteComponent(() => import('./WhoToCallScreen.tsx'), 'WhoToCallScreen');

const comebacks = createRoute({ getParentRoute: () => root, path: '/comebacks', component: CameBackScreen });
const logComeback = createRoute({
  getParentRoute: () => root,
  path: '/comebacks/new',
  validateSearch: ({ of, ticket }: { of?: unknown; ticket?: unknown }): { of?: number; ticket?: number } => ({
    ...(Number(of) > 0 && { of: Number(of) }),
    ...(Number(ticket) > 0 && { ticket: Number(ticket) }),
  }),
  component: brought(LogComebackScreen, () => {
    const { of = null, ticket = null } = logComeback.useSearch();
    return <LogComebackScreen of={of} ticket={ticket} />;
  }),
});
const comeback = createRoute({
  getParentRoute: () => root,
  path: '/comebacks/$comebackId',
  component: brought(ComebackScreen, () => <ComebackScreen comebackId={Number(comeback.useParams().comebackId)} />),
});
const comebackReport = createRoute({
  getParentRoute: () => root,
  path: '/comebacks/$comebackId/report/$copy',
  component: brought(ComebackReportScreen, () => {
    const { comebackId, copy } = comebackReport.useParams();
    return <ComebackReportScreen comebackId={Number(comebackId)} copy={copy === 'shop' ? 'shop' : 'customer'} />;
  }),
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
  component: brought(SharingScreen, () => <SharingScreen of={null} />),
});
const sharing = createRoute({
  getParentRoute: () => root,
  path: '/comebacks/sharing/$kind/$id',
  component: brought(SharingScreen, () => {
    const { kind, id } = sharing.useParams();
    return <SharingScreen of={sharedAt(kind, Number(id))} />;
  }),
});

export const comebacksRoutes = [
  comebacks,
  logComeback,
  comeback,
  comebackReport,
  fleet,
  costOfComebacks,
  whoToCall,
  callListPaper,
  askWhatIsShared,
  sharing,
] as const;
