// The head of every screen in the Gauges place, whose lines are a room of their own: which side of the gauges one looks at.
import { PlaceTabs } from './PlaceTabs.tsx';

const sides = [
  { path: '/gauges', name: 'Register', holds: /^\/gauges(\/new|\/\d+.*|\/touched.*)?$/ },
  { path: '/gauges/studies', name: 'Repeat tests', holds: /^\/gauges\/studies/ },
  { path: '/gauges/methods', name: 'Two methods', holds: /^\/gauges\/methods/ },
  { path: '/gauges/builds', name: 'Over the builds', holds: /^\/gauges\/builds/ },
  { path: '/lines', name: 'On a line', holds: /^\/lines/ },
];

export function GaugesTabs() {
  return <PlaceTabs place="Gauges" sides={sides} />;
}
