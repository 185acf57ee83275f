// The places of the left rail, in the order they stand there.
export const places = [
  { path: '/jobs', name: 'Jobs' },
  { path: '/bench', name: 'Bench' },
  { path: '/stock', name: 'Stock' },
  { path: '/comebacks', name: 'Comebacks' },
  { path: '/specs', name: 'Specs' },
  { path: '/gauges', name: 'Gauges' },
  { path: '/shop', name: 'Shop' },
] as const;
