// The frame round every screen, as the route that all others stand under.
import { createRootRoute } from '@tanstack/react-router';
import { Frame } from './Frame.tsx';

export const root = createRootRoute({ component: Frame });
