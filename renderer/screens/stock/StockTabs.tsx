// The head of every screen in the Stock place: which shelf one looks at.
import { Link, useLocation } from '@tanstack/react-router';
import { classNames } from '../../components/class-names.ts';
import styles from './StockTabs.module.css';

const shelves: ReadonlyArray<{ readonly path: string; readonly name: string; readonly holds: RegExp }> = [
  { path: '/stock', name: 'Parts', holds: /^\/stock(\/parts.*)?$/ },
  { path: '/stock/plates', name: 'Plates', holds: /^\/stock\/plates/ },
  { path: '/stock/buy', name: 'To buy', holds: /^\/stock\/buy/ },
  { path: '/stock/import', name: 'Import', holds: /^\/stock\/import/ },
];

export function StockTabs() {
  const { pathname } = useLocation();
  return (
    <nav className={styles.shelves} aria-label="Stock">
      {shelves.map(({ path, name, holds }) => {
        const isHere = holds.test(pathname);
        return (
          <Link
            key={path}
            to={path}
            className={classNames(styles.shelf, isHere && styles.here)}
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
