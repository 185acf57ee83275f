// Which address shows which screen of the spec sheets.
import { createRoute } from '@tanstack/react-router';
import { root } from '../../frame/root-route.ts';

import { EditSheetScreen } from './EditSheetScreen.tsx';
import { FamiliesScreen } from './FamiliesScreen.tsx';
import { SheetScreen } from './SheetScreen.tsx';
import { SmallJobsScreen } from './SmallJobsScreen.tsx';

const smallJobs = createRoute({
  getParentRoute: () => root,
  path: '/specs/$familyId/small-jobs',
  component: () => <SmallJobsScreen familyId={Number(smallJobs.useParams().familyId)} />,
});
const specs = createRoute({ getParentRoute: () => root, path: '/specs', component: FamiliesScreen });
const sheet = createRoute({
  getParentRoute: () => root,
  path: '/specs/$familyId',
  component: () => <SheetScreen familyId={Number(sheet.useParams().familyId)} />,
});
const earlierSheet = createRoute({
  getParentRoute: () => root,
  path: '/specs/$familyId/revision/$number',
  component: () => {
    const { familyId, number } = earlierSheet.useParams();
    return <SheetScreen familyId={Number(familyId)} number={Number(number)} />;
  },
});
const editSheet = createRoute({
  getParentRoute: () => root,
  path: '/specs/$familyId/edit',
  component: () => <EditSheetScreen familyId={Number(editSheet.useParams().familyId)} />,
});

export const specsRoutes = [smallJobs, specs, sheet, earlierSheet, editSheet] as const;
