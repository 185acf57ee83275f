// Which address shows what the program is.
import { createRoute } from '@tanstack/react-router';
import { root } from '../../frame/root-route.ts';
import { AboutScreen } from './AboutScreen.tsx';

const about = createRoute({ getParentRoute: () => root, path: '/shop/about', component: AboutScreen });

export const aboutRoutes = [about] as const;
