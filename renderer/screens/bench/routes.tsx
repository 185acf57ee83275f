// Which address shows which screen of the bench.
import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { brought } from '../../frame/brought.ts';
import { root } from '../../frame/root-route.ts';

const BenchScreen = lazyRouteComponent(() => import('./BenchScreen.tsx'), 'BenchScreen');
const ReadingScreen = lazyRouteComponent(() => import('./ReadingScreen.tsx'), 'ReadingScreen');
const UnitSwapsScreen = lazyRouteComponent(() => import('./UnitSwapsScreen.tsx'), 'UnitSwapsScreen');

const bench = createRoute({
  getParentRoute: () => root,
  path: '/bench',
  validateSearch: ({ unit }: { unit?: unknown }): { unit?: number } => (Number(unit) > 0 ? { unit: Number(unit) } : {}),
  component: brought(BenchScreen, () => <BenchScreen unit={bench.useSearch().unit ?? null} />),
});
const reading = createRoute({
  getParentRoute: () => root,
  path: '/bench/$jobId/$checkId',
  component: brought(ReadingScreen, () => {
    const { jobId, checkId } = reading.useParams();
    return <ReadingScreen jobId={Number(jobId)} checkId={Number(checkId)} />;
  }),
});
const swapsOfUnit = createRoute({
  getParentRoute: () => root,
  path: '/bench/$jobId/swaps',
  component: brought(UnitSwapsScreen, () => <UnitSwapsScreen jobId={Number(swapsOfUnit.useParams().jobId)} />),
});

export const benchRoutes = [bench, reading, swapsOfUnit] as const;
