// The invented unit KX3: read 31 with washer 66 in, so 97 to share; washers 60/66/72/78/84 give 37/31/25/19/13.
import { describe, expect, it } from 'vitest';
import { endPlayOptions, spaceForWasher } from '../../app/packs/end-play.ts';
import { accepted, expectRefusal } from '../statistics/result.ts';

const washers = [60, 66, 72, 78, 84];

describe('which washer brings an end play to its target', () => {
  it('78 for a target of 18 between 10 and 24, because a thicker washer gives less', () => {
    expect(accepted(endPlayOptions(spaceForWasher(66, 31), washers, 18, { lower: 10, upper: 24 }))).toEqual([
      { thickness: 78, endPlay: 19, absoluteDeviation: 1 },
      { thickness: 84, endPlay: 13, absoluteDeviation: 5 },
    ]);
  });

  it('inches keep their decimals, and an end play on its limit is inside', () => {
    const inches = washers.map((thou) => thou / 1000);
    const space = spaceForWasher(0.066, 0.031);
    expect(space).toBe(0.097);
    expect(accepted(endPlayOptions(space, inches, 0.019, { lower: 0.019, upper: 0.031 }))).toEqual([
      { thickness: 0.078, endPlay: 0.019, absoluteDeviation: 0 },
      { thickness: 0.072, endPlay: 0.025, absoluteDeviation: 0.006 },
      { thickness: 0.066, endPlay: 0.031, absoluteDeviation: 0.012 },
    ]);
  });

  it('the thinner washer comes first on a tie, and one that does not go in is never offered', () => {
    const options = accepted(endPlayOptions(80, [84, 60, 70], 15, { lower: null, upper: null }));
    expect(options.map((option) => option.thickness)).toEqual([60, 70]);
  });

  it('refuses when nothing fits, and names the thickness that would', () => {
    const refused = endPlayOptions(97, [60, 66], 18, { lower: 10, upper: 24 });
    expectRefusal(refused, 'nothing-fits');
    expect(refused).toMatchObject({ refusal: { message: expect.stringContaining('79') } });
    expectRefusal(endPlayOptions(97, [], 18, { lower: 10, upper: 24 }), 'no-washers');
    expectRefusal(endPlayOptions(97, washers, 18, { lower: 24, upper: 10 }), 'limits-upside-down');
    expectRefusal(endPlayOptions(97, washers, 9, { lower: 10, upper: 24 }), 'target-outside');
  });
});
