// Which address shows which screen of the clutch figures of a pack.
import { createRoute } from '@tanstack/react-router';
import { root } from '../../frame/root-route.ts';

import { ClutchScreen } from './ClutchScreen.tsx';

const clutch = createRoute({
  getParentRoute: () => root,
  path: '/jobs/$jobId/clutch/$packId',
  component: () => {
    const { jobId, packId } = clutch.useParams();
    return <ClutchScreen jobId={Number(jobId)} packId={Number(packId)} />;
  },
});

export const clutchRoutes = [clutch] as const;
