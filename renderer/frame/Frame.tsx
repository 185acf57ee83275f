// The frame round every screen: skip link, rail, and the place the person is in.
import { Outlet, useRouterState } from '@tanstack/react-router';
import { useEffect, useRef } from 'react';
import { useRead } from '../rpc/use-read.ts';
import { FirstSteps } from '../screens/shop/FirstSteps.tsx';
import styles from './Frame.module.css';
import { Loaded } from './Loaded.tsx';
import { OpenShopProvider } from './open-shop.ts';
import { Rail } from './Rail.tsx';

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
  const path = useRouterState({ select: (state) => state.location.pathname });

  const shownPath = useRef(path);

  // What had the focus may be gone with the screen it stood on; then the new screen takes it.
  useEffect(() => {
    if (shownPath.current === path) return;
    shownPath.current = path;
    if (document.activeElement === document.body) main.current?.focus();
  }, [path]);

  return (
    <div className={styles.frame}>
      <button type="button" className={styles.skip} onClick={() => main.current?.focus()}>
        Skip to the work
      </button>
      <Rail />
      <main ref={main} id="main" className={styles.main} tabIndex={-1}>
        <Outlet />
      </main>
    </div>
  );
}
