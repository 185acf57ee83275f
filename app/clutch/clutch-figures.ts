// The figures a sheet may state about a pack's clutch: what each is called, its unit, and what cannot be meant.
import type { AmountField } from '../quantities/parse-amount.ts';
import type { LengthUnit, Quantity } from '../quantities/units.ts';
import type { ClutchFigures } from './clutch.contract.ts';

export type FigureName = keyof ClutchFigures;

export type Figure = {
  readonly name: FigureName;
  readonly label: string;
  readonly quantity: Quantity;
  /** What a bare number is in, in a shop that works in thou and in one that works in millimetres. */
  readonly unit: Readonly<Record<LengthUnit, string>>;
  readonly hint?: string;
};

const inches = { thou: 'in', mm: 'mm' } as const;
const plain = { thou: '×', mm: '×' } as const;
const speed = { thou: 'rpm', mm: 'rpm' } as const;
const inertia = { thou: 'lb·ft²', mm: 'kg·m²' } as const;

/** In the order they are asked for. */
export const clutchFigureList: readonly Figure[] = [
  { name: 'pistonOutside_nm', label: 'Piston, outside', quantity: 'length', unit: inches },
  { name: 'pistonInside_nm', label: 'Piston, inside', quantity: 'length', unit: inches },
  {
    name: 'springs_mN',
    label: 'Return springs, installed',
    quantity: 'force',
    unit: { thou: 'lbf', mm: 'N' },
    hint: 'all together',
  },
  {
    name: 'springRate_mN_m',
    label: 'Spring rate',
    quantity: 'spring rate',
    unit: { thou: 'lbf/in', mm: 'N/mm' },
    hint: 'if known, all together',
  },
  { name: 'frictionOutside_nm', label: 'Lining, outside', quantity: 'length', unit: inches },
  { name: 'frictionInside_nm', label: 'Lining, inside', quantity: 'length', unit: inches },
  {
    name: 'friction_millionths',
    label: 'Friction coefficient',
    quantity: 'ratio',
    unit: plain,
    hint: 'assumed, such as 0.14',
  },
  {
    name: 'applyPressure_Pa',
    label: 'Apply pressure',
    quantity: 'pressure',
    unit: { thou: 'psi', mm: 'bar' },
    hint: 'where it carries most',
  },
  {
    name: 'gearShare_millionths',
    label: 'Share of the torque',
    quantity: 'ratio',
    unit: plain,
    hint: 'of what goes into the box, where it carries most',
  },
  {
    name: 'flow_uL_min',
    label: 'Flow that fills it',
    quantity: 'flow',
    unit: { thou: 'qt/min', mm: 'L/min' },
  },
  { name: 'inertia1_mg_m2', label: 'Inertia, one side', quantity: 'moment of inertia', unit: inertia },
  { name: 'inertia2_mg_m2', label: 'Inertia, other side', quantity: 'moment of inertia', unit: inertia },
  { name: 'speed1_rpm', label: 'Speed, one side', quantity: 'speed', unit: speed },
  { name: 'speed2_rpm', label: 'Speed, other side', quantity: 'speed', unit: speed },
  {
    name: 'steelMass_mg',
    label: 'Steels, mass',
    quantity: 'mass',
    unit: { thou: 'lb', mm: 'kg' },
    hint: 'all together',
  },
];

export const noClutchFigures: ClutchFigures = {
  pistonOutside_nm: null,
  pistonInside_nm: null,
  springs_mN: null,
  springRate_mN_m: null,
  frictionOutside_nm: null,
  frictionInside_nm: null,
  friction_millionths: null,
  applyPressure_Pa: null,
  gearShare_millionths: null,
  flow_uL_min: null,
  inertia1_mg_m2: null,
  inertia2_mg_m2: null,
  speed1_rpm: null,
  speed2_rpm: null,
  steelMass_mg: null,
};

/** Far beyond any clutch, so that a slipped unit is asked about. */
const largest: Partial<Record<Quantity, number>> = {
  length: 1_000_000_000,
  ratio: 20_000_000,
};

/** How a figure is typed. */
export function clutchField(
  { label, quantity, unit }: Figure,
  { lengthUnit, decimalMark }: Pick<AmountField, 'decimalMark'> & { readonly lengthUnit: LengthUnit },
): AmountField {
  const most = largest[quantity];
  return {
    quantity,
    unit: unit[lengthUnit],
    decimalMark,
    what: label.toLowerCase(),
    ...(most === undefined ? {} : { largest: most }),
  };
}

/** What cannot be so, in one sentence; undefined where nothing is wrong with what was stated. */
export function clutchProblem(figures: ClutchFigures): string | undefined {
  const { pistonOutside_nm, pistonInside_nm, frictionOutside_nm, frictionInside_nm } = figures;
  const isRing = (outside: number | null, inside: number | null) =>
    outside === null || inside === null || outside > inside;
  if (!isRing(pistonOutside_nm, pistonInside_nm)) return 'the piston must be larger outside than inside.';
  if (!isRing(frictionOutside_nm, frictionInside_nm)) return 'the lining must be larger outside than inside.';
  const isNegative = clutchFigureList.find(({ name, quantity }) => quantity !== 'speed' && (figures[name] ?? 0) < 0);
  return isNegative && `${isNegative.label.toLowerCase()} cannot be less than zero.`;
}
