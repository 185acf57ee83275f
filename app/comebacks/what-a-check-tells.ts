// What a check of a sheet is about, so that builds of any family can be asked for their clearances, leak-downs or
// pressures without anybody naming them.
import type { Check } from '../specs/spec-sheet.ts';

export const tellings = [
  'clearance',
  'end play',
  'bushing or ring',
  'leak-down',
  'line pressure',
  'cooler flow',
  'converter',
  'travel',
  'torque',
  'other',
] as const;

export type Telling = (typeof tellings)[number];

export type CheckWords = Pick<Check, 'name' | 'group' | 'packName' | 'method' | 'quantity'>;

// Words of the trade, tried in this order over the check's name first and its group after; common practice, no source.
const lengthWords: ReadonlyArray<readonly [RegExp, Telling]> = [
  [/\bend[- ]?(play|clearance|float)\b/, 'end play'],
  [/\b(servo|piston|apply) (travel|stroke)\b/, 'travel'],
  [/\b(pull[- ]?out|hub depth|converter depth)\b/, 'converter'],
  [/\b(bushings?|bearings?|rings?|grooves?|pump|gears?|seals?)\b/, 'bushing or ring'],
  [/\bconverter\b/, 'converter'],
  [/\btravel\b/, 'travel'],
  [/\bclearance\b/, 'clearance'],
];

/**
 * What a check tells, from how it is read and from its words: a length of a pack is its clearance, pressure lost over a
 * time is a leak-down, any other pressure is line pressure unless it is the cooler’s, what flows through a cooler is
 * cooler flow. A check whose words say nothing known is *other*.
 */
export function whatACheckTells(check: CheckWords): Telling {
  if (check.method === 'drop') return 'leak-down';
  if (check.packName !== null && check.quantity === 'length') return 'clearance';
  const isOfCooler = /\bcooler\b/.test(`${check.name} ${check.group}`.toLowerCase());
  switch (check.quantity) {
    case 'volume':
    case 'flow':
      return isOfCooler ? 'cooler flow' : 'other';
    case 'pressure':
      return isOfCooler ? 'other' : 'line pressure';
    case 'torque':
      return 'torque';
    case 'length':
      return wordsTell(check.name) ?? wordsTell(check.group) ?? 'other';
    default:
      return 'other';
  }
}

/**
 * The pack a check is about: the one whose clearance it is, else the only one whose name stands in the check’s name
 * (“Port A, Forward”). Undefined where none is named or two are.
 */
export function packOfCheck<P extends { readonly name: string }>(
  check: Pick<CheckWords, 'name' | 'packName'>,
  packs: readonly P[],
): P | undefined {
  const ofClearance = packs.find(({ name }) => name === check.packName);
  if (ofClearance) return ofClearance;
  const named = packs.filter(({ name }) => standsIn(name, check.name));
  // “Low” also stands in “Low/reverse”: the longest name is meant.
  const [longest, ...others] = named.toSorted((a, b) => b.name.length - a.name.length);
  return longest && others.every(({ name }) => standsIn(name, longest.name)) ? longest : undefined;
}

function wordsTell(words: string): Telling | undefined {
  return lengthWords.find(([pattern]) => pattern.test(words.toLowerCase()))?.[1];
}

/** Whether `part` stands in `whole` as a word of its own. */
function standsIn(part: string, whole: string): boolean {
  const quoted = part.toLowerCase().replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return new RegExp(`(^|[^\\p{L}\\p{N}])${quoted}($|[^\\p{L}\\p{N}])`, 'u').test(whole.toLowerCase());
}
