// The spec sheet of KX3, an invented unit family. Its limits and figures are invented too and agree with each other.
import { noClutchFigures } from '../../../app/clutch/clutch-figures.ts';
import type { Check, Limits, Pack, Slot, SpecSheet } from '../../../app/specs/spec-sheet.ts';
import { kx3Lists } from './kx3-lists.ts';

export const thou = (value: number): number => Math.round(value * 25_400);
const sixteenths = (value: number): number => value * 1_587_500;
export const psi = (value: number): number => Math.round(value * 6_894.757293168);
const inchPounds = (value: number): number => Math.round(value * 112.9848290276167);
const footPounds = (value: number): number => Math.round(value * 1_355.8179483314);
const poundsForce = (value: number): number => Math.round(value * 4_448.2216152605);
export const quarts = (value: number): number => Math.round(value * 946_352.946);

const plain = { isAdjuster: false, outline: '', catalogue_nm: [], facing: '' };
const friction = (height: number): Slot => ({ ...plain, kind: 'friction', nominal_nm: thou(height) });
export const backingPlate = (height: number): Slot => ({ ...plain, kind: 'backing plate', nominal_nm: thou(height) });
const steel = (outline: string): Slot => ({ ...plain, kind: 'steel', nominal_nm: null, isAdjuster: true, outline });

/** Steel, friction, steel, friction … from the piston. */
export const stack = (plates: number, outline: string, frictionHeight: number): Slot[] =>
  Array.from({ length: plates }, () => [steel(outline), friction(frictionHeight)]).flat();

const packs: Pack[] = [
  {
    name: 'Forward',
    slots: [...stack(4, 'KX3 forward', 80), backingPlate(250)],
    rules: [],
    note: 'Fixed snap ring. Backing plate at the ring end.',
    clutch: {
      ...noClutchFigures,
      pistonOutside_nm: thou(5000),
      pistonInside_nm: thou(3000),
      springs_mN: poundsForce(192),
      frictionOutside_nm: thou(6000),
      frictionInside_nm: thou(5000),
      friction_millionths: 140_000,
      applyPressure_Pa: psi(160),
      gearShare_millionths: 1_000_000,
      flow_uL_min: Math.round(2 * 946_352.946),
    },
  },
  {
    name: 'Direct',
    slots: [...stack(4, 'KX3 direct', 84.25), backingPlate(310)],
    rules: [{ kind: 'thinnest-in', pieceKind: 'steel', places: [2, 3] }],
    note: 'Fixed snap ring. The thinnest steel goes to the middle.',
    clutch: null,
  },
  {
    name: 'Low/reverse',
    slots: [
      { ...plain, kind: 'wave plate', nominal_nm: thou(85) },
      ...stack(5, 'KX3 low/reverse', 80),
      backingPlate(200),
      {
        ...plain,
        kind: 'snap ring',
        nominal_nm: null,
        isAdjuster: true,
        outline: 'KX3 low/reverse ring',
        catalogue_nm: [62, 74, 86, 98].map(thou),
      },
    ],
    rules: [],
    note: 'In the case. The wave plate counts at its hand-pressed height.',
    clutch: null,
  },
];

export const target = (aim: number, low: number, high: number): Limits => ({
  kind: 'target',
  target: thou(aim),
  low: thou(low),
  high: thou(high),
});
export const range = (low: number, high: number): Limits => ({ kind: 'range', low: thou(low), high: thou(high) });

export const lengthCheck = (check: Pick<Check, 'name' | 'group' | 'method' | 'limits'> & Partial<Check>): Check => ({
  packName: null,
  quantity: 'length',
  unit: 'thou',
  holdsFor: 'mean',
  waveState: 'none',
  spots: 1,
  shims_nm: [],
  sourceNote: 'invented sheet KX3, page 2',
  ...check,
});

const clearances: Check[] = [
  { packName: 'Forward', limits: target(25, 20, 30), spots: 4 },
  { packName: 'Direct', limits: target(45, 40, 50), spots: 4 },
  { packName: 'Low/reverse', limits: target(58, 45, 70), waveState: 'in' as const },
].map((clearance) =>
  lengthCheck({
    name: `${clearance.packName} clearance`,
    group: 'Clearance',
    method: 'air',
    holdsFor: 'mean and tightest',
    sourceNote: 'invented sheet KX3, page 1',
    ...clearance,
  }),
);

const mechanical: Check[] = [
  lengthCheck({
    name: 'Front end play',
    group: 'End play',
    method: 'dial',
    limits: target(18, 10, 24),
    shims_nm: [60, 66, 72, 78, 84].map(thou),
  }),
  lengthCheck({ name: 'Rear end play', group: 'End play', method: 'dial', limits: range(4, 19) }),
  lengthCheck({ name: 'Pump gear side', group: 'Pump, bushings, rings', method: 'direct', limits: range(0.8, 2) }),
  lengthCheck({ name: 'Outer gear to pocket', group: 'Pump, bushings, rings', method: 'direct', limits: range(3, 7) }),
  lengthCheck({
    name: 'Inner gear to crescent',
    group: 'Pump, bushings, rings',
    method: 'direct',
    limits: range(5, 10),
  }),
  lengthCheck({ name: 'Stator bushing', group: 'Pump, bushings, rings', method: 'direct', limits: range(1, 3.5) }),
  lengthCheck({
    name: 'Converter hub to pump bushing',
    group: 'Pump, bushings, rings',
    method: 'direct',
    limits: range(2, 4.5),
  }),
  lengthCheck({
    name: 'Sealing-ring groove width',
    group: 'Pump, bushings, rings',
    method: 'direct',
    limits: {
      kind: 'variants',
      variants: [
        { name: '90 wide', nominal: thou(90), within: thou(3) },
        { name: '118 wide', nominal: thou(118), within: thou(3) },
      ],
    },
  }),
  lengthCheck({ name: 'Sealing ring side', group: 'Pump, bushings, rings', method: 'direct', limits: range(1.5, 4) }),
  lengthCheck({ name: 'Servo travel', group: 'Servo and band', method: 'dial', limits: range(100, 150) }),
  lengthCheck({
    name: 'Converter hub depth',
    group: 'Converter',
    method: 'direct',
    unit: 'in',
    limits: { kind: 'minimum', low: sixteenths(18) },
  }),
  lengthCheck({
    name: 'Converter pull-out',
    group: 'Converter',
    method: 'direct',
    unit: 'in',
    limits: { kind: 'range', low: sixteenths(2), high: sixteenths(3) },
  }),
];

const circuits: Check[] = [
  ['Port A, Forward', 10],
  ['Port B, Direct', 10],
  ['Port C3, Low/reverse', 10],
  ['Port C4, servo apply', 10],
].map(([name, most]) =>
  lengthCheck({
    name: `${name}`,
    group: 'Leak-down, 40 psi, 10 s',
    method: 'drop',
    quantity: 'pressure',
    unit: 'psi',
    limits: { kind: 'maximum', high: psi(Number(most)) },
    sourceNote: 'invented sheet KX3, page 3',
  }),
);

const pressures: Check[] = (
  [
    ['Line, idle, P/N', 70, 90],
    ['Line, idle, D', 70, 90],
    ['Line, idle, R', 110, 140],
    ['Line, full throttle, D', 150, 175],
    ['Line, full throttle, R', 240, 280],
  ] as const
).map(([name, low, high]) =>
  lengthCheck({
    name,
    group: 'Line pressure',
    method: 'direct',
    quantity: 'pressure',
    unit: 'psi',
    limits: { kind: 'range', low: psi(low), high: psi(high) },
    sourceNote: 'invented sheet KX3, page 4',
  }),
);

const cooler = lengthCheck({
  name: 'Cooler flow in 30 s',
  group: 'Cooler',
  method: 'direct',
  quantity: 'volume',
  unit: 'qt',
  limits: { kind: 'minimum', low: quarts(1) },
  sourceNote: 'invented sheet KX3, page 4',
});

// A torque is a figure to set, not to search for: good enough within 5 % of it.
const torques: Check[] = (
  [
    ['Pump bolts', 18, 'lb-ft', footPounds],
    ['Extension housing', 24, 'lb-ft', footPounds],
    ['Band locknut', 35, 'lb-ft', footPounds],
    ['Valve body', 100, 'lb-in', inchPounds],
    ['Pan', 120, 'lb-in', inchPounds],
  ] as const
).map(([name, aim, unit, milliNewtonMetres]) =>
  lengthCheck({
    name,
    group: 'Torque',
    method: 'direct',
    quantity: 'torque',
    unit,
    limits: {
      kind: 'target',
      target: milliNewtonMetres(aim),
      low: milliNewtonMetres(aim * 0.95),
      high: milliNewtonMetres(aim * 1.05),
    },
    sourceNote: 'invented sheet KX3, page 5',
  }),
);

export const kx3Sheet: SpecSheet = {
  packs,
  checks: [...clearances, ...mechanical, ...circuits, ...pressures, cooler, ...torques],
  lists: kx3Lists,
  pictures: [],
};
