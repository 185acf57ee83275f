// What a shop measures and the integers it is kept as. A base unit is small enough that what a person types is whole.

// Lengths are whole nanometres: 1 in = 25 400 000 nm exactly, so 0.1 thou, 0.001 mm and 1/64 in are all whole.

/** What a gauge reads, so what a check may ask for. */
export const readQuantities = ['length', 'pressure', 'torque', 'volume', 'angle', 'count'] as const;

/** With what is only stated: the figures an estimate is made from. */
export const quantities = [
  ...readQuantities,
  'force',
  'spring rate',
  'ratio',
  'flow',
  'speed',
  'moment of inertia',
  'mass',
] as const;
export type Quantity = (typeof quantities)[number];

export type Unit = {
  readonly name: string;
  readonly quantity: Quantity;
  /**
   * Base units in one of these, as an exact fraction. Base units: nm, Pa, mN·m, µL, degree, one; of what is stated mN,
   * mN/m, millionth, µL/min, rpm, mg·m², mg.
   */
  readonly numerator: bigint;
  readonly denominator: bigint;
  /** Decimals a formatted amount carries unless somebody asks for another number. */
  readonly decimals: number;
  /** What else a person may type for it, lower case. */
  readonly spellings: readonly string[];
};

const unit = (
  name: string,
  quantity: Quantity,
  numerator: bigint,
  denominator: bigint,
  decimals: number,
  ...spellings: string[]
): Unit => ({ name, quantity, numerator, denominator, decimals, spellings: [name.toLowerCase(), ...spellings] });

// Exact definitions (NIST SP 811 appendix B): 1 in = 25.4 mm, 1 lb = 0.453 592 37 kg, g = 9.806 65 m/s², 1 gal = 231 in³.
const units = [
  unit('thou', 'length', 25_400n, 1n, 1, 't', 'th', 'mil'),
  unit('in', 'length', 25_400_000n, 1n, 4, '"', 'inch', 'inches'),
  unit('mm', 'length', 1_000_000n, 1n, 3),
  unit('psi', 'pressure', 8_896_443_230_521n, 1_290_320_000n, 1),
  unit('kPa', 'pressure', 1_000n, 1n, 1),
  unit('bar', 'pressure', 100_000n, 1n, 3),
  unit('lb-ft', 'torque', 3_389_544_870_828_501n, 2_500_000_000_000n, 1, 'ft-lb', 'lbft', 'ftlb'),
  unit('lb-in', 'torque', 1_129_848_290_276_167n, 10_000_000_000_000n, 1, 'in-lb', 'lbin', 'inlb'),
  unit('N·m', 'torque', 1_000n, 1n, 1, 'nm', 'n.m', 'n-m'),
  unit('qt', 'volume', 946_352_946n, 1_000n, 2, 'quart', 'quarts'),
  unit('L', 'volume', 1_000_000n, 1n, 3),
  unit('°', 'angle', 1n, 1n, 0, 'deg'),
  unit('turns', 'angle', 360n, 1n, 2, 'turn'),
  unit('', 'count', 1n, 1n, 0),
  unit('in³', 'volume', 16_387_064n, 1_000n, 3, 'in3'),
  unit('cm³', 'volume', 1_000n, 1n, 2, 'cm3', 'ml'),
  unit('lbf', 'force', 8_896_443_230_521n, 2_000_000_000n, 0, 'lb', 'lbs'),
  unit('N', 'force', 1_000n, 1n, 0),
  unit('lbf/in', 'spring rate', 8_896_443_230_521n, 50_800_000n, 1, 'lb/in'),
  unit('N/mm', 'spring rate', 1_000_000n, 1n, 2),
  unit('×', 'ratio', 1_000_000n, 1n, 2, 'x', ':1'),
  unit('qt/min', 'flow', 946_352_946n, 1_000n, 2),
  unit('L/min', 'flow', 1_000_000n, 1n, 2),
  unit('rpm', 'speed', 1n, 1n, 0),
  unit('lb·ft²', 'moment of inertia', 421_401_100_938_048n, 10_000_000_000n, 3, 'lb.ft2', 'lb-ft2', 'lbft2'),
  unit('kg·m²', 'moment of inertia', 1_000_000n, 1n, 4, 'kg.m2', 'kgm2'),
  unit('lb', 'mass', 45_359_237n, 100n, 2, 'lbs'),
  unit('kg', 'mass', 1_000_000n, 1n, 3),
] as const satisfies readonly Unit[];

export type LengthUnit = 'thou' | 'mm';

export const unitNames = units.map((each) => each.name);

/** The unit of this exact name; naming one that is not here is a bug, so names come from `unitNames`. */
export function unitNamed(name: string): Unit {
  const found = units.find((each) => each.name === name);
  if (!found) throw new Error(`no unit is called ${name}`);
  return found;
}

/** The unit an amount set in `unit` is shown and typed in: thou and mm in the shop's own, all else as it was set. */
export function shownUnit(unit: string, lengthUnit: LengthUnit): string {
  return unit === 'thou' || unit === 'mm' ? lengthUnit : unit;
}

/** The unit a person means by what stands behind a number, or undefined. */
export function unitSpelled(spelling: string, quantity: Quantity): Unit | undefined {
  const word = spelling.trim().toLowerCase();
  return units.find((each) => each.quantity === quantity && each.spellings.includes(word));
}

/** The units a check may be read in. */
export const readUnitNames = units
  .filter(({ quantity }) => (readQuantities as readonly string[]).includes(quantity))
  .map(({ name }) => name);

export function unitsOf(quantity: Quantity): readonly Unit[] {
  return units.filter((each) => each.quantity === quantity);
}
