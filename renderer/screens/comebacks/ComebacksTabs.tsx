// The head of every screen in the Comebacks place: which side of what came back one looks at.
import { PlaceTabs } from '../../frame/PlaceTabs.tsx';

const sides = [
  { path: '/comebacks', name: 'Came back', holds: /^\/comebacks(\/new|\/\d+.*)?$/ },
  { path: '/comebacks/fleet', name: 'Fleet', holds: /^\/comebacks\/fleet/ },
  { path: '/comebacks/calls', name: 'Who to call', holds: /^\/comebacks\/(calls|sharing)/ },
  { path: '/comebacks/cost', name: 'Cost', holds: /^\/comebacks\/cost/ },
];

export function ComebacksTabs() {
  return <PlaceTabs place="Comebacks" sides={sides} />;
}
