// Which address shows which screen.
import { createHashHistory, createRootRoute, createRoute, createRouter, redirect } from '@tanstack/react-router';
import { EmptyState } from '../components/EmptyState.tsx';
import { ErrorScreen } from './ErrorScreen.tsx';
import { Frame } from './Frame.tsx';
import { places } from './places.ts';

const root = createRootRoute({ component: Frame });

const home = createRoute({
  getParentRoute: () => root,
  path: '/',
  beforeLoad: () => {
    throw redirect({ to: '/jobs' });
  },
});

const screens = places.map((place) =>
  createRoute({
    getParentRoute: () => root,
    path: place.path,
    component: () => <EmptyState title={place.name}>Nothing here yet.</EmptyState>,
  }),
);

export const router = createRouter({
  routeTree: root.addChildren([home, ...screens]),
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
