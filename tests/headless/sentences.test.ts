// What the calculator says when an input cannot be taken, and what it says about itself.
import { describe, expect, it } from 'vitest';
import { explain } from '../../main/shells/headless/calculator/explain.ts';
import { computations } from '../../main/shells/headless/calculator/registry.ts';
import { ask } from './ask-calculator.ts';

const dial = { resolution: 1 };
const largest = 9007199254740991;

describe('a refusal says what is wrong', () => {
  it.each([
    [
      'fisher',
      {
        table: [
          [2 ** 53, 1],
          [1, 1],
        ],
      },
      `table[0][0] must be ${largest} or less.`,
    ],
    ['select-plates', { space: -(2 ** 53) }, `space must be ${-largest} or more.`],
    ['select-plates-jointly', { thicknesses: [1e300] }, `thicknesses[0] must be ${largest} or less.`],
    ['false-discovery', { p: [], q: 0.05 }, 'p is too short.'],
    ['normal', 3, 'The input must be an object.'],
    [
      'convert',
      { value: '1e99999', from: 'm', to: 'm' },
      '“1e99999” is too large or too small: exponents go from −999 to 999.',
    ],
    [
      'convert',
      { value: '1e-1000', from: 'm', to: 'm' },
      '“1e-1000” is too large or too small: exponents go from −999 to 999.',
    ],
    ['convert', { value: '1e', from: 'm', to: 'm' }, '“1e” is not a decimal number.'],
    ['convert', { value: '1', from: 'J', to: 'm' }, 'J measures energy and m length.'],
    ['gauge-study', { rows: [{ value: 1 }] }, 'rows[0].part is missing.'],
    ['gauge-study', { rows: [{ part: 1, appraiser: 'a', value: 1 }] }, 'rows[0].trial is missing.'],
    [
      'gauge-study',
      { rows: [{ part: true, appraiser: 1, trial: 1, value: 1 }] },
      'rows[0].part must be text or a number.',
    ],
    [
      'clearance',
      { spots: [{ reads: [{ push: 4, air: 1 }] }], dial, repeatability: { standardDeviation: 1 } },
      'repeatability.degreesOfFreedom is missing.',
    ],
    [
      'budget',
      { readings: [1, 2], components: [{ kind: 'uniform', halfWidth: 1 }], coverage: 0.95 },
      'components[0].kind must be "rectangular" or "triangular" or "arcsine" or "resolution" or "normal".',
    ],
    ['budget', { readings: [1, 2], components: [{ halfWidth: 1 }], coverage: 0.95 }, 'components[0].kind is missing.'],
  ])('%s of %j', (name, input, message) => {
    expect(ask(name, input)).toMatchObject({ refusal: { message } });
  });
});

describe('an explanation says', () => {
  const explained = (name: string) => explain(computations.find((each) => each.name === name)!);

  it.each([
    ['clearance', 'more than half a turn lies between two neighbours'],
    ['agreement', 'bias ± 1.959964 standard deviations'],
    ['kaplan-meier', 'until an event takes it lower'],
    ['next-swaps', 'a thickness to buy has as many decimals as the finest length given'],
    ['feeler', 'refused where that is below zero'],
  ])('%s: %s', (name, sentence) => {
    expect(explained(name)).toContain(sentence);
  });

  it('which chances of fisher are 0', () => {
    expect(explained('fisher').match(/0 (where it is below 1e-307|likewise)/g)).toHaveLength(3);
  });
});
