// Which address shows which screen of the spec sheets.
import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { brought } from '../../frame/brought.ts';
import { root } from '../../frame/root-route.ts';

const EditSheetScreen = lazyRouteComponent(() => import('./EditSheetScreen.tsx'), 'EditSheetScreen');
const FamiliesScreen = lazyRouteComponent(() => import('./FamiliesScreen.tsx'), 'FamiliesScreen');
const SheetScreen = lazyRouteComponent(() => import('./SheetScreen.tsx'), 'SheetScreen');
const SmallJobsScreen = lazyRouteComponent(() => import('./SmallJobsScreen.tsx'), 'SmallJobsScreen');

const smallJobs = createRoute({
  getParentRoute: () => root,
  path: '/specs/$familyId/small-jobs',
  component: brought(SmallJobsScreen, () => <SmallJobsScreen familyId={Number(smallJobs.useParams().familyId)} />),
});
const specs = createRoute({ getParentRoute: () => root, path: '/specs', component: FamiliesScreen });
const sheet = createRoute({
  getParentRoute: () => root,
  path: '/specs/$familyId',
  component: brought(SheetScreen, () => <SheetScreen familyId={Number(sheet.useParams().familyId)} />),
});
const earlierSheet = createRoute({
  getParentRoute: () => root,
  path: '/specs/$familyId/revision/$number',
  component: brought(SheetScreen, () => {
    const { familyId, number } = earlierSheet.useParams();
    return <SheetScreen familyId={Number(familyId)} number={Number(number)} />;
  }),
});
const editSheet = createRoute({
  getParentRoute: () => root,
  path: '/specs/$familyId/edit',
  component: brought(EditSheetScreen, () => <EditSheetScreen familyId={Number(editSheet.useParams().familyId)} />),
});

export const specsRoutes = [smallJobs, specs, sheet, earlierSheet, editSheet] as const;
