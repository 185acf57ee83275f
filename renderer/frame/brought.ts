// A screen at its address, its code brought when it is first asked for.
import type { AsyncRouteComponent } from '@tanstack/react-router';
import type { ReactNode } from 'react';

type Shown = { (): ReactNode; preload?: () => Promise<void> | undefined };

/**
 * What an address shows, with the screen that it shows it in. The router waits for the screen's code before it leaves
 * the one before, so the hand never stands on nothing in between.
 */
export function brought<Props>(screen: AsyncRouteComponent<Props>, shown: () => ReactNode): Shown {
  return Object.assign(shown, screen.preload && { preload: screen.preload });
}
