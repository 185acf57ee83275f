// The invented unit KX3 as its build report sees it: the figures of the worked example, in base units.
// 1 thou = 25 400 nm; 1 psi = 6894.757 Pa; 1 lb-ft = 1355.818 mN·m.
import type { BuildReportFacts, CheckFacts, PackFacts } from '../../app/papers/build-report-facts.ts';

export const thou = (amount: number): number => Math.round(amount * 25_400);
const psi = (amount: number) => Math.round(amount * 6894.757293);
const poundFeet = (amount: number) => Math.round(amount * 1355.8179483);

type Given = { readonly low?: number; readonly high?: number; readonly target?: number; readonly found?: number };
type Final = readonly [value: number, expanded: number | null, min?: number, max?: number, spots?: number];

/** A length check in thou that came in, unless said otherwise. */
export function check(
  group: string,
  name: string,
  method: string,
  given: Given,
  final: Final | null,
  more: Partial<CheckFacts> = {},
  base = thou,
  unit = 'thou',
): CheckFacts {
  const asBase = (amount: number | undefined) => (amount === undefined ? null : base(amount));
  return {
    group,
    name,
    method,
    unit,
    limits: { low: asBase(given.low), high: asBase(given.high) },
    target: asBase(given.target),
    asFound: given.found === undefined ? null : { value: base(given.found), expanded: null },
    final:
      final === null
        ? null
        : {
            value: base(final[0]),
            expanded: final[1] === null ? null : base(final[1]),
            min: base(final[2] ?? final[0]),
            max: base(final[3] ?? final[0]),
            spots: final[4] ?? 1,
          },
    verdict: final === null ? 'not read' : 'in',
    by: null,
    variantName: null,
    override: null,
    supersededCount: 0,
    note: '',
    ...more,
  };
}

export const forward = check(
  'Clearance',
  'Forward',
  'by air',
  { low: 20, high: 30, target: 25, found: 32 },
  [26, 1.5, 25, 27, 4],
);
export const direct = check(
  'Clearance',
  'Direct',
  'by air',
  { low: 40, high: 50, target: 45, found: 38 },
  [45, 1.5, 44, 47, 4],
);
export const lowReverse = check(
  'Clearance',
  'Low/reverse, wave plate in',
  'by air',
  { low: 45, high: 70, target: 58, found: 72 },
  [60, 1.7],
);
export const frontEndPlay = check(
  'End play',
  'Front',
  'by dial',
  { low: 10, high: 24, target: 18, found: 31 },
  [19, 1.2],
  {
    supersededCount: 1,
    note: 'washer 66 → 78',
  },
);

const pumpGroup = 'Pump, bushings, rings';
const others: readonly CheckFacts[] = [
  frontEndPlay,
  check('End play', 'Rear', 'by dial', { low: 4, high: 19, found: 11 }, [11, 1.2]),
  check(pumpGroup, 'Pump gear side', '', { low: 0.8, high: 2 }, [1.4, 0.3]),
  check(pumpGroup, 'Outer gear to pocket', '', { low: 3, high: 7 }, [5, 0.5]),
  check(pumpGroup, 'Inner gear to crescent', '', { low: 5, high: 10 }, [7, 0.5]),
  check(pumpGroup, 'Stator bushing', '', { low: 1, high: 3.5 }, [2.5, 0.5]),
  check(pumpGroup, 'Converter hub to pump bushing', '', { low: 2, high: 4.5, found: 5 }, [3, 0.5], {
    note: 'bushing changed',
  }),
  check(pumpGroup, 'Direct drum bushing', '', { low: 1, high: 3 }, [2.7, 0.2]),
  check(pumpGroup, 'Sealing ring to groove', '', { low: 1.5, high: 4 }, [2, 0.4]),
  check(pumpGroup, 'Sealing-ring groove', '', {}, [90, 0.4], { verdict: 'not judged', variantName: '90 wide' }),
  check('Servo', 'Servo travel', '', { low: 100, high: 150 }, [125, 2]),
];

const pressures: readonly CheckFacts[] = [
  check('Line pressure', 'Idle, P and N', '', { low: 70, high: 90 }, [82, null], {}, psi, 'psi'),
  check('Line pressure', 'Reverse', '', { low: 110, high: 140 }, [128, null], {}, psi, 'psi'),
  check('Line pressure', 'Drive, full', '', { low: 150, high: 175 }, [164, null], {}, psi, 'psi'),
  check('Leak-down over 10 s', 'Port A, Forward', '', { high: 10 }, [3, null], {}, psi, 'psi'),
  check('Torques', 'Pump bolts', '', { low: 17, high: 19, target: 18 }, [18, null], {}, poundFeet, 'lb-ft'),
];

type Piece = PackFacts['pieces'][number];
const steel = (height: number, label: string, isNew = false, tag?: string): Piece => ({
  kind: 'steel',
  label,
  height_nm: thou(height),
  isNew,
  ...(tag === undefined ? {} : { tag }),
});
const friction = (height: number): Piece => ({
  kind: 'friction',
  label: 'friction',
  height_nm: thou(height),
  isNew: false,
});
const plate = (kind: Piece['kind'], height: number, label: string = kind, isNew = false): Piece => ({
  kind,
  label,
  height_nm: thou(height),
  isNew,
});
const around = (...values: readonly number[]) =>
  values.map((value, index) => ({ degrees: index * 90, value: thou(value) }));
const sure = (value: number, expanded: number) => ({ value: thou(value), expanded: thou(expanded) });

/** Forward: 911.0 − 320.0 − 315.5 − 250.0 = 25.5 by calculation, 26.0 by air. */
export const forwardPack: PackFacts = {
  name: 'Forward',
  pieces: [
    steel(77, 'steel'),
    friction(79.5),
    steel(83, 'steel', true),
    friction(80),
    steel(78, 'steel'),
    friction(80),
    steel(77.5, 'steel'),
    friction(80.5),
    plate('backing plate', 250),
  ],
  calculated_nm: thou(25.5),
  check: forward,
  spots: around(25, 26, 27, 26),
  harmonic: { amplitude: thou(1), loosestAtDegrees: 180 },
  mockUps: [
    { number: 0, changed: '', predicted: null, read: sure(32, 1.5), note: '' },
    {
      number: 1,
      changed: 'steel 2: 76.5 → 83.0',
      predicted: sure(25.5, 3.2),
      read: sure(26, 1.5),
      note: 'friction 4 had hung on its lugs at first',
    },
  ],
  setup: ['dial on the drum', 'stroked twice and down', '40 psi at port A', 'plates soaked'],
  traces: [],
  clutch: [],
};

const directPack: PackFacts = {
  name: 'Direct',
  pieces: [
    steel(92, 'steel'),
    friction(84),
    steel(84, 'steel', true),
    friction(84.5),
    steel(92.5, 'steel'),
    friction(84),
    steel(91.5, 'steel'),
    friction(84.5),
    plate('backing plate', 310),
  ],
  calculated_nm: thou(45),
  check: direct,
  spots: around(44, 45, 47, 44),
  harmonic: { amplitude: thou(1.58), loosestAtDegrees: 161.6 },
  mockUps: [
    { number: 0, changed: '', predicted: null, read: sure(38, 1.5), note: '' },
    { number: 1, changed: 'steel 2: 91.0 → 84.0', predicted: sure(45, 3.2), read: sure(45, 1.5), note: '' },
  ],
  setup: [],
  traces: [],
  clutch: [],
};

/** Low/reverse: 1181.0 − 400.0 − 350.0 − 85.0 − 200.0 − 86.0 = 60.0, read at one spot. */
const lowReversePack: PackFacts = {
  name: 'Low/reverse',
  pieces: [
    plate('wave plate', 85),
    ...[70, 70.5, 69.5, 70, 70].flatMap((height) => [steel(height, 'steel'), friction(80)]),
    plate('backing plate', 200),
    plate('snap ring', 86, 'snap ring', true),
  ],
  calculated_nm: thou(60),
  check: lowReverse,
  spots: around(60),
  harmonic: null,
  mockUps: [
    { number: 0, changed: '', predicted: null, read: sure(72, 1.7), note: '' },
    { number: 1, changed: 'snap ring: 74 → 86', predicted: sure(60, 3.3), read: sure(60, 1.7), note: '' },
  ],
  setup: [],
  traces: [],
  clutch: [],
};

export const kx3: BuildReportFacts = {
  copy: 'shop',
  paper: 'letter',
  lengthUnit: 'thou',
  decimalMark: '.',
  shopName: 'Harrow Lane Transmission',
  isDemo: true,
  jobNumber: 214,
  printedOn: '2026-11-26',
  customerName: 'Dana Whitlow',
  unit: { family: 'KX3', serial: '', vehicle: 'half-ton pickup', use: 'tow', caseTag: '214' },
  complaint: 'slips 2–3 when hot',
  distance: '118,400 miles',
  builtBy: 'RA',
  builtFrom: '2026-11-23',
  builtUntil: '2026-11-26',
  specRevision: 3,
  checks: [forward, direct, lowReverse, ...others, ...pressures],
  packs: [forwardPack, directPack, lowReversePack],
  findings: [],
  lists: [],
  superseded: [
    { check: 'Front end play', typed: '12', putRight: '19', reason: 'dial had been read upside down', by: 'RA' },
  ],
  delivery: null,
  warranty: '12 months or 12,000 miles, from the day in service',
  cautions: [
    'Fluid and cooler: flush and check level hot before towing; come back at 500 miles for a look, no charge.',
  ],
  notes: ['Customer asked twice about the price of the converter.'],
  photos: [],
  onPictures: { pictures: [], sides: [] },
};
