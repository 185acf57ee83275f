// Which address shows which screen of the shop.
import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { root } from '../../frame/root-route.ts';

const ShopScreen = lazyRouteComponent(() => import('./ShopScreen.tsx'), 'ShopScreen');

const shop = createRoute({ getParentRoute: () => root, path: '/shop', component: ShopScreen });

export const shopRoutes = [shop] as const;
