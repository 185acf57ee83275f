// The head of every screen in the Stock place: which shelf one looks at.
import { PlaceTabs } from '../../frame/PlaceTabs.tsx';

const shelves = [
  { path: '/stock', name: 'Parts', holds: /^\/stock(\/parts.*)?$/ },
  { path: '/stock/plates', name: 'Plates', holds: /^\/stock\/plates/ },
  { path: '/stock/buy', name: 'To buy', holds: /^\/stock\/buy/ },
  { path: '/stock/import', name: 'Import', holds: /^\/stock\/import/ },
];

export function StockTabs() {
  return <PlaceTabs place="Stock" sides={shelves} />;
}
