// Which address shows which screen: every room brings its own.
import { createHashHistory, createRoute, createRouter, redirect } from '@tanstack/react-router';
import { EmptyState } from '../components/EmptyState.tsx';
import { aboutRoutes } from '../screens/about/routes.tsx';
import { benchRoutes } from '../screens/bench/routes.tsx';
import { clutchRoutes } from '../screens/clutch/routes.tsx';
import { comebacksRoutes } from '../screens/comebacks/routes.tsx';
import { gaugesRoutes } from '../screens/gauges/routes.tsx';
import { indicatorsRoutes } from '../screens/indicators/routes.tsx';
import { jobsRoutes } from '../screens/jobs/routes.tsx';
import { shopRoutes } from '../screens/shop/routes.tsx';
import { specsRoutes } from '../screens/specs/routes.tsx';
import { stockRoutes } from '../screens/stock/routes.tsx';
import { ErrorScreen } from './ErrorScreen.tsx';
import { root } from './root-route.ts';

const home = createRoute({
  getParentRoute: () => root,
  path: '/',
  beforeLoad: () => {
    throw redirect({ to: '/jobs' });
  },
});

export const router = createRouter({
  routeTree: root.addChildren([
    home,
    ...aboutRoutes,
    ...benchRoutes,
    ...clutchRoutes,
    ...comebacksRoutes,
    ...gaugesRoutes,
    ...indicatorsRoutes,
    ...jobsRoutes,
    ...shopRoutes,
    ...specsRoutes,
    ...stockRoutes,
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
