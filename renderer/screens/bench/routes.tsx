// Which address shows which screen of the bench.
import { createRoute } from '@tanstack/react-router';
import { root } from '../../frame/root-route.ts';

import { BenchScreen } from './BenchScreen.tsx';
import { ReadingScreen } from './ReadingScreen.tsx';
import { UnitSwapsScreen } from './UnitSwapsScreen.tsx';

const bench = createRoute({
  getParentRoute: () => root,
  path: '/bench',
  validateSearch: ({ unit }: { unit?: unknown }): { unit?: number } => (Number(unit) > 0 ? { unit: Number(unit) } : {}),
  component: () => <BenchScreen unit={bench.useSearch().unit ?? null} />,
});
const reading = createRoute({
  getParentRoute: () => root,
  path: '/bench/$jobId/$checkId',
  component: () => {
    const { jobId, checkId } = reading.useParams();
    return <ReadingScreen jobId={Number(jobId)} checkId={Number(checkId)} />;
  },
});
const swapsOfUnit = createRoute({
  getParentRoute: () => root,
  path: '/bench/$jobId/swaps',
  component: () => <UnitSwapsScreen jobId={Number(swapsOfUnit.useParams().jobId)} />,
});

export const benchRoutes = [bench, reading, swapsOfUnit] as const;
