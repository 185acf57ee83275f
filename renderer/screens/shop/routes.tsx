// Which address shows which screen of the shop.
import { createRoute } from '@tanstack/react-router';
import { root } from '../../frame/root-route.ts';

import { ShopScreen } from './ShopScreen.tsx';

const shop = createRoute({ getParentRoute: () => root, path: '/shop', component: ShopScreen });

export const shopRoutes = [shop] as const;
