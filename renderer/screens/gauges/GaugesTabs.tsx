// The head of every screen in the Gauges place: which side of the gauges one looks at.
import { Link, useLocation } from '@tanstack/react-router';
import { classNames } from '../../components/class-names.ts';
import styles from './GaugesTabs.module.css';

const sides: ReadonlyArray<{ readonly path: string; readonly name: string; readonly holds: RegExp }> = [
  { path: '/gauges', name: 'Register', holds: /^\/gauges(\/new|\/\d+.*|\/touched.*)?$/ },
  { path: '/gauges/studies', name: 'Repeat tests', holds: /^\/gauges\/studies/ },
  { path: '/gauges/methods', name: 'Two methods', holds: /^\/gauges\/methods/ },
  { path: '/gauges/builds', name: 'Over the builds', holds: /^\/gauges\/builds/ },
  { path: '/lines', name: 'On a line', holds: /^\/lines/ },
];

export function GaugesTabs() {
  const { pathname } = useLocation();
  return (
    <nav className={styles.sides} aria-label="Gauges">
      {sides.map(({ path, name, holds }) => {
        const isHere = holds.test(pathname);
        return (
          <Link
            key={path}
            to={path}
            className={classNames(styles.side, isHere && styles.here)}
            activeOptions={{ exact: true }}
            aria-current={isHere ? 'true' : undefined}
          >
            {name}
          </Link>
        );
      })}
    </nav>
  );
}
