// Which address shows which screen of the clutch figures of a pack.
import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { brought } from '../../frame/brought.ts';
import { root } from '../../frame/root-route.ts';

const ClutchScreen = lazyRouteComponent(() => import('./ClutchScreen.tsx'), 'ClutchScreen');

const clutch = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/clutch/$packId',
  component: brought(ClutchScreen, () => {
    const { jobId, packId } = clutch.useParams();
    return <ClutchScreen jobId={Number(jobId)} packId={Number(packId)} />;
  }),
});

export const clutchRoutes = [clutch] as const;
