// The frame round every screen: skip link, rail, and the place the person is in.
import { Outlet, useRouterState } from '@tanstack/react-router';
import { useEffect, useRef } from 'react';
import { useRead } from '../rpc/use-read.ts';
import { FirstSteps } from '../screens/shop/FirstSteps.tsx';
import styles from './Frame.module.css';
import { Loaded } from './Loaded.tsx';
import { OpenShopProvider } from './open-shop.ts';
import { Rail } from './Rail.tsx';
import { StandingSentence } from './StandingSentence.tsx';

export function Frame() {
  const shop = useRead('shop.getShop', {});
  return (
    <Loaded read={shop}>
      {(state) =>
        state.open ? (
          <OpenShopProvider value={state}>
            <Places />
          </OpenShopProvider>
        ) : (
          <FirstSteps shop={state} />
        )
      }
    </Loaded>
  );
}

function Places() {
  const main = useRef<HTMLElement>(null);
  // Where the person has arrived, not where they are going: the screen that they leave still holds the focus.
  const path = useRouterState({ select: (state) => state.resolvedLocation?.pathname });

  const shownPath = useRef(path);

  // What had the focus may be gone with the screen it stood on; then the new screen takes it.
  useEffect(() => {
    const cameFrom = shownPath.current;
    shownPath.current = path;
    if (cameFrom === undefined || cameFrom === path) return;
    // A screen is met at its beginning, or where it already put the hand.
    main.current?.scrollTo(0, 0);
    if (main.current?.contains(document.activeElement)) document.activeElement?.scrollIntoView({ block: 'nearest' });
    // A frame later: an entry that asks for the focus after Enter on a link gets it only then.
    const frame = requestAnimationFrame(() => {
      if (document.activeElement === document.body) main.current?.focus();
    });
    return () => cancelAnimationFrame(frame);
  }, [path]);

  return (
    <div className={styles.frame}>
      <button type="button" className={styles.skip} onClick={() => main.current?.focus()}>
        Skip to the work
      </button>
      <Rail />
      <main ref={main} id="main" className={styles.main} tabIndex={-1}>
        <StandingSentence />
        <Outlet />
      </main>
    </div>
  );
}
