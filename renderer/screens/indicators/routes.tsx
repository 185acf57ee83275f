// Which address shows which screen of gauges on a line.
import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { root } from '../../frame/root-route.ts';

const LinesScreen = lazyRouteComponent(() => import('./LinesScreen.tsx'), 'LinesScreen');

const lines = createRoute({ getParentRoute: () => root, path: '/lines', component: LinesScreen });

export const indicatorsRoutes = [lines] as const;
