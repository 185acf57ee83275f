// Which address shows which screen of comebacks and the fleet.
import { createRoute } from '@tanstack/react-router';
import { root } from '../../frame/root-route.ts';
import { CallListPaperScreen } from './CallListPaperScreen.tsx';
import { CameBackScreen } from './CameBackScreen.tsx';
import { ComebackReportScreen } from './ComebackReportScreen.tsx';
import { ComebackScreen } from './ComebackScreen.tsx';
import { CostScreen } from './CostScreen.tsx';
import { FleetScreen } from './FleetScreen.tsx';
import { LogComebackScreen } from './LogComebackScreen.tsx';
import { SharingScreen } from './SharingScreen.tsx';
import { sharedAt } from './shared-address.ts';
import { WhoToCallScreen } from './WhoToCallScreen.tsx';

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
