// Units to units without a rounding error: decimal text in, decimal text out, fractions of whole numbers between.
import { accept, type Result, refuse } from '../base/result.ts';

type Fraction = { readonly numerator: bigint; readonly denominator: bigint };

type ConvertibleUnit = {
  readonly name: string;
  readonly kind: string;
  /** SI units of its kind in one of these. */
  readonly factor: Fraction;
  /** What zero of this scale is in SI units; only temperatures have one. */
  readonly zero: Fraction;
  readonly spellings: readonly string[];
};

/** Powers of ten beyond this are no amounts any more, and would be a long wait. */
const largestExponent = 999;
/** Digits written where the exact decimal never ends. */
const significantDigits = 25;

/**
 * `value`, decimal text in `from`, as decimal text in `to`: exact where the decimal ends, otherwise 25 significant
 * digits. Refuses text that is not a decimal number, an exponent beyond ± 999, an unknown unit, units of different
 * kinds, and a temperature below absolute zero.
 * Source: NIST SP 811 appendix B, exact definitions: 1 in = 25.4 mm, 1 lb = 0.453 592 37 kg, g = 9.806 65 m/s²,
 * 1 gal = 231 in³, 1 Btu(IT) = 1055.055 852 62 J, K = °C + 273.15.
 */
export function convertExactly(value: string, from: string, to: string): Result<string> {
  const amount = parseDecimal(value);
  if (amount === 'out of range') {
    return refuse('out-of-range', `“${value}” is too large or too small: exponents go from −999 to 999.`);
  }
  if (!amount) return refuse('not-a-number', `“${value}” is not a decimal number.`);
  const source = unitCalled(from);
  const target = unitCalled(to);
  if (!source) return refuse('unknown-unit', `“${from}” is not a unit this knows: ${convertibleUnits().join(', ')}.`);
  if (!target) return refuse('unknown-unit', `“${to}” is not a unit this knows: ${convertibleUnits().join(', ')}.`);
  if (source.kind !== target.kind) {
    return refuse('different-kinds', `${source.name} measures ${source.kind} and ${target.name} ${target.kind}.`);
  }
  const inSi = plus(times(amount, source.factor), source.zero);
  if (source.kind === 'temperature' && inSi.numerator < 0n) {
    return refuse('below-absolute-zero', 'No temperature lies below absolute zero, −273.15 °C or −459.67 °F.');
  }
  return accept(writeDecimal(over(plus(inSi, negated(target.zero)), target.factor)));
}

/** The names of all units, for a person who asks. */
export function convertibleUnits(): readonly string[] {
  return units.map((unit) => unit.name);
}

function unitCalled(spelling: string): ConvertibleUnit | undefined {
  const plain = plainSpelling(spelling);
  return units.find((unit) => [unit.name, ...unit.spellings].some((each) => plainSpelling(each) === plain));
}

/** ft·lbf, ft-lbf and ft.lbf are one; N·m and nm are not, so letters keep their case. */
function plainSpelling(spelling: string): string {
  return spelling
    .replaceAll('²', '2')
    .replaceAll('³', '3')
    .replace(/[µμ]/g, 'u')
    .replace(/[\s·*.^_°-]/g, '');
}

function parseDecimal(text: string): Fraction | 'out of range' | null {
  const match = /^([+-]?)(\d*)(?:\.(\d*))?(?:e([+-]?\d+))?$/i.exec(text.trim().replace('−', '-'));
  const [, sign = '', whole = '', decimals = '', exponent = '0'] = match ?? [];
  if (whole === '' && decimals === '') return null;
  if (Math.abs(Number(exponent)) > largestExponent) return 'out of range';
  const digits = BigInt(`${sign === '-' ? '-' : ''}${whole}${decimals}`);
  const shift = Number(exponent) - decimals.length;
  return reduced(digits * 10n ** BigInt(Math.max(0, shift)), 10n ** BigInt(Math.max(0, -shift)));
}

function writeDecimal({ numerator, denominator }: Fraction): string {
  const sign = numerator < 0n ? '-' : '';
  const magnitude = numerator < 0n ? -numerator : numerator;
  const decimals = decimalsUntilItEnds(denominator);
  if (decimals !== null) return sign + placePoint((magnitude * 10n ** BigInt(decimals)) / denominator, decimals);
  // Counting digits finds the quotient’s length to within one; one too many is taken back.
  let shift = significantDigits - (magnitude.toString().length - denominator.toString().length);
  let rounded = roundedQuotient(magnitude, denominator, shift);
  if (rounded.toString().length > significantDigits) {
    shift -= 1;
    rounded = roundedQuotient(magnitude, denominator, shift);
  }
  return sign + (shift > 0 ? placePoint(rounded, shift) : (rounded * 10n ** BigInt(-shift)).toString());
}

function roundedQuotient(magnitude: bigint, denominator: bigint, shift: number): bigint {
  const top = magnitude * 10n ** BigInt(Math.max(0, shift));
  const bottom = denominator * 10n ** BigInt(Math.max(0, -shift));
  return (2n * top + bottom) / (2n * bottom);
}

/** null when the decimal never ends: the denominator holds a prime other than 2 and 5. */
function decimalsUntilItEnds(denominator: bigint): number | null {
  let [rest, twos, fives] = [denominator, 0, 0];
  for (; rest % 2n === 0n; twos++) rest /= 2n;
  for (; rest % 5n === 0n; fives++) rest /= 5n;
  return rest === 1n ? Math.max(twos, fives) : null;
}

function placePoint(digits: bigint, decimals: number): string {
  if (decimals === 0) return digits.toString();
  const text = digits.toString().padStart(decimals + 1, '0');
  return `${text.slice(0, -decimals)}.${text.slice(-decimals)}`;
}

function reduced(numerator: bigint, denominator: bigint): Fraction {
  let [a, b] = [numerator < 0n ? -numerator : numerator, denominator];
  while (b !== 0n) [a, b] = [b, a % b];
  return { numerator: numerator / a, denominator: denominator / a };
}

function times(left: Fraction, right: Fraction): Fraction {
  return reduced(left.numerator * right.numerator, left.denominator * right.denominator);
}

function over(left: Fraction, right: Fraction): Fraction {
  return reduced(left.numerator * right.denominator, left.denominator * right.numerator);
}

function plus(left: Fraction, right: Fraction): Fraction {
  return reduced(
    left.numerator * right.denominator + right.numerator * left.denominator,
    left.denominator * right.denominator,
  );
}

function negated({ numerator, denominator }: Fraction): Fraction {
  return { numerator: -numerator, denominator };
}

function exactly(decimal: string): Fraction {
  const fraction = parseDecimal(decimal);
  if (typeof fraction !== 'object' || fraction === null) throw new Error(`not a decimal: ${decimal}`);
  return fraction;
}

const nothing = exactly('0');
const inch = exactly('0.0254');
const foot = times(exactly('12'), inch);
const squareInch = times(inch, inch);
const cubicInch = times(squareInch, inch);
const gallon = times(exactly('231'), cubicInch);
const pound = exactly('0.45359237');
const gravity = exactly('9.80665');
const poundForce = times(pound, gravity);
const footPound = times(foot, poundForce);

const unit = (kind: string, name: string, factor: Fraction, ...spellings: string[]): ConvertibleUnit => ({
  name,
  kind,
  factor,
  zero: nothing,
  spellings,
});

const units: readonly ConvertibleUnit[] = [
  unit('length', 'm', exactly('1')),
  unit('length', 'km', exactly('1000')),
  unit('length', 'cm', exactly('0.01')),
  unit('length', 'mm', exactly('0.001')),
  unit('length', 'um', exactly('0.000001')),
  unit('length', 'nm', exactly('0.000000001')),
  unit('length', 'in', inch, 'inch'),
  unit('length', 'thou', times(inch, exactly('0.001')), 'mil'),
  unit('length', 'ft', foot),
  unit('length', 'mile', times(exactly('5280'), foot), 'mi'),
  unit('area', 'm2', exactly('1')),
  unit('area', 'cm2', exactly('0.0001')),
  unit('area', 'mm2', exactly('0.000001')),
  unit('area', 'in2', squareInch),
  unit('volume', 'm3', exactly('1')),
  unit('volume', 'L', exactly('0.001'), 'l'),
  unit('volume', 'mL', exactly('0.000001'), 'ml'),
  unit('volume', 'cm3', exactly('0.000001')),
  unit('volume', 'mm3', exactly('0.000000001')),
  unit('volume', 'in3', cubicInch),
  unit('volume', 'US qt', over(gallon, exactly('4')), 'qt'),
  unit('volume', 'US gal', gallon, 'gal'),
  unit('mass', 'kg', exactly('1')),
  unit('mass', 'g', exactly('0.001')),
  unit('mass', 'lb', pound, 'lbm'),
  unit('mass', 'oz', over(pound, exactly('16'))),
  unit('mass', 'slug', over(poundForce, foot)),
  unit('force', 'N', exactly('1')),
  unit('force', 'kN', exactly('1000')),
  unit('force', 'lbf', poundForce),
  unit('force', 'kgf', gravity),
  unit('pressure', 'Pa', exactly('1')),
  unit('pressure', 'kPa', exactly('1000')),
  unit('pressure', 'MPa', exactly('1000000')),
  unit('pressure', 'bar', exactly('100000')),
  unit('pressure', 'psi', over(poundForce, squareInch), 'lbf/in2'),
  unit('pressure', 'kgf/cm2', over(gravity, exactly('0.0001'))),
  unit('torque', 'N·m', exactly('1')),
  unit('torque', 'ft·lbf', footPound, 'lbf·ft', 'lb-ft', 'ft-lb'),
  unit('torque', 'in·lbf', times(inch, poundForce), 'lbf·in', 'lb-in', 'in-lb'),
  unit('torque', 'kgf·m', gravity),
  unit('energy', 'J', exactly('1')),
  unit('energy', 'kJ', exactly('1000')),
  unit('energy', 'Btu_IT', exactly('1055.05585262'), 'Btu'),
  unit('power', 'W', exactly('1')),
  unit('power', 'kW', exactly('1000')),
  unit('power', 'hp', times(exactly('550'), footPound), 'hp(550 ft·lbf/s)'),
  unit('stiffness', 'N/m', exactly('1')),
  unit('stiffness', 'N/mm', exactly('1000')),
  unit('stiffness', 'lbf/in', over(poundForce, inch)),
  unit('moment of inertia', 'kg·m2', exactly('1')),
  unit('moment of inertia', 'slug·ft2', times(over(poundForce, foot), times(foot, foot))),
  unit('moment of inertia', 'lb·ft2', times(pound, times(foot, foot))),
  unit('temperature', 'K', exactly('1')),
  { ...unit('temperature', '°C', exactly('1'), 'degC'), zero: exactly('273.15') },
  {
    ...unit('temperature', '°F', over(exactly('5'), exactly('9')), 'degF'),
    zero: over(exactly('2298.35'), exactly('9')),
  },
  unit('temperature difference', 'ΔK', exactly('1'), 'deltaK'),
  unit('temperature difference', 'Δ°C', exactly('1'), 'deltaC'),
  unit('temperature difference', 'Δ°F', over(exactly('5'), exactly('9')), 'deltaF'),
];
