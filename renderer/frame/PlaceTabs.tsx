// The head of every screen of a place that has several sides: which of them one looks at.
import { Link, useLocation } from '@tanstack/react-router';
import { classNames } from '../components/class-names.ts';
import styles from './PlaceTabs.module.css';

type Side = {
  readonly path: string;
  readonly name: string;
  /** The addresses that belong to it. */
  readonly holds: RegExp;
};

export function PlaceTabs({ place, sides }: { place: string; sides: readonly Side[] }) {
  const { pathname } = useLocation();
  return (
    <nav className={styles.sides} aria-label={place}>
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
