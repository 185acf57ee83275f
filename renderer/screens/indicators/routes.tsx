// Which address shows which screen of gauges on a line.
import { createRoute } from '@tanstack/react-router';
import { root } from '../../frame/root-route.ts';

import { LinesScreen } from './LinesScreen.tsx';

const lines = createRoute({ getParentRoute: () => root, path: '/lines', component: LinesScreen });

export const indicatorsRoutes = [lines] as const;
