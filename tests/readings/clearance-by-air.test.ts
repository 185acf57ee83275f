// The invented unit KX3: its spots and sums are worked by hand. thou throughout.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AirMethod, type AirSpot, clearanceByAir } from '../../app/readings/clearance-by-air.ts';
import { feelerGap } from '../../app/readings/feeler-gap.ts';
import { poolRepeatabilities, repeatabilityOfRepeats } from '../../app/readings/repeatability.ts';
import { expectRelative } from '../statistics/relative.ts';
import { accepted, expectRefusal } from '../statistics/result.ts';

const shop: AirMethod = {
  repeatability: { standardDeviation: 0.7, degreesOfFreedom: 100 },
  handForceHalfWidth: 1,
  baseOnPumpHalfWidth: 0,
  dialResolution: 1,
  dialPermittedError: 0,
  coverage: 0.95,
};

const around = (...reads: readonly (readonly [push: number, air: number])[]): AirSpot[] =>
  reads.map(([push, air], i) => ({ degrees: i * 90, reads: [{ push, air }] }));

const known = (spots: readonly AirSpot[], method = shop) => {
  const { uncertainty } = accepted(clearanceByAir(spots, method));
  if (!uncertainty.known) throw new Error(uncertainty.reason);
  return uncertainty;
};

describe('a clearance is push-down plus air travel', () => {
  it.each([
    ['Forward as found', around([4, 27], [5, 27], [5, 28], [4, 28]), 32, 31, 33, 1, 180],
    ['Forward final', around([4, 21], [4, 22], [5, 22], [5, 21]), 26, 25, 27, 1, 180],
    ['Direct as found', around([5, 32], [5, 33], [6, 33], [5, 33]), 38, 37, 39, 1, 180],
    ['Direct final', around([5, 39], [5, 40], [6, 41], [5, 39]), 45, 44, 47, 1.58, 161.6],
  ])('%s', (_, spots, mean, min, max, amplitude, loosestAtDegrees) => {
    const found = accepted(clearanceByAir(spots, shop));
    expect(found).toMatchObject({ mean, min, max, uneven: max - min });
    expect(found.harmonic?.amplitude).toBeCloseTo(amplitude, 2);
    expect(found.harmonic?.loosestAtDegrees).toBeCloseTo(loosestAtDegrees, 1);
  });

  it('4 + 23 is 27 and 5 + 27 is 32 (common practice, no source)', () => {
    expect(accepted(clearanceByAir(around([4, 23]), shop)).mean).toBe(27);
    expect(accepted(clearanceByAir(around([5, 27]), shop)).mean).toBe(32);
  });

  it('zeroed again on the pressed plate, 38 is 38 and not 43', () => {
    const spots = [{ degrees: 0, reads: [{ push: 5, air: 38, isZeroedAgain: true }] }];
    expect(accepted(clearanceByAir(spots, shop)).mean).toBe(38);
  });

  it('reads at one spot are repeats, and the mean is of the spots', () => {
    const spots: AirSpot[] = [
      {
        degrees: 0,
        reads: [
          { push: 4, air: 20 },
          { push: 4, air: 22 },
          { push: 4, air: 24 },
        ],
      },
      { degrees: 180, reads: [{ push: 4, air: 30 }] },
    ];
    const found = accepted(clearanceByAir(spots, shop));
    expect(found.spots.map((spot) => spot.clearance)).toEqual([26, 34]);
    expect(found.mean).toBe(30);
  });
});

describe('how sure a clearance is', () => {
  it('four spots with the shop’s starting values are ± 1.5, and the hand matters more than the dial', () => {
    // By hand: 0.7²/4 + 1²/3 + 2·1²/12 = 0.1225 + 0.3333 + 0.1667 = 0.6225, its root 0.789, times 1.961.
    const { combined, expanded, lines } = known(around([4, 27], [5, 27], [5, 28], [4, 28]));
    expectRelative(combined, Math.sqrt(0.1225 + 1 / 3 + 1 / 6), 1e-14);
    expect(expanded).toBeCloseTo(1.55, 2);
    expect(lines.map((line) => line.name)).toEqual(['repeatability', 'hand force on the push', 'dial resolution']);
    expect(lines[1]!.share).toBeGreaterThan(lines[2]!.share);
    expect(lines.reduce((sum, line) => sum + line.share, 0)).toBeCloseTo(1, 14);
  });

  it('one spot read twice is ± 1.7', () => {
    // By hand: 0.7²/2 + 1/3 + 1/6 = 0.745, its root 0.863, times 1.96.
    const twice = [
      {
        degrees: 0,
        reads: [
          { push: 10, air: 50 },
          { push: 10, air: 50 },
        ],
      },
    ];
    expect(known(twice).expanded).toBeCloseTo(1.69, 2);
  });

  it('26 and 28 at two spots do not give an absurd interval', () => {
    // With ν = 1 from the two spots themselves it would be ± 12.7.
    expect(known(around([4, 22], [4, 24])).expanded).toBeLessThan(2.5);
  });

  it('a base on the pump and a permitted error each add a rectangular line', () => {
    const { lines } = known(around([4, 23]), { ...shop, baseOnPumpHalfWidth: 1, dialPermittedError: 0.6 });
    const named = Object.fromEntries(lines.map((line) => [line.name, line.standardUncertainty]));
    expectRelative(named['dial base on the pump'], 1 / Math.sqrt(3), 1e-15);
    expectRelative(named['dial permitted error'], 0.6 / Math.sqrt(3), 1e-15);
  });

  it('one read and no repeatability keeps the plain number and says why its uncertainty is unknown', () => {
    const found = accepted(clearanceByAir(around([4, 23]), { ...shop, repeatability: null }));
    expect(found.mean).toBe(27);
    expect(found.uncertainty).toMatchObject({ known: false, reason: expect.stringMatching(/repeatability unknown/i) });
  });

  it('without a stated repeatability the repeats at the spots show it, never the differences between spots', () => {
    const spots: AirSpot[] = [
      {
        degrees: 0,
        reads: [
          { push: 4, air: 22 },
          { push: 4, air: 24 },
        ],
      },
      {
        degrees: 180,
        reads: [
          { push: 4, air: 42 },
          { push: 4, air: 44 },
        ],
      },
    ];
    const { lines } = known(spots, { ...shop, repeatability: null });
    // By hand: Σ(±1)² = 4 over 2 degrees of freedom, s = √2, over four reads s/2.
    expect(lines[0]).toMatchObject({ name: 'repeatability', degreesOfFreedom: 2 });
    expectRelative(lines[0]!.standardUncertainty, Math.SQRT2 / 2, 1e-14);
  });
});

describe('how a clearance goes around the drum', () => {
  it('is not claimed with three spots, without places, or with all spots in one half', () => {
    const at = (...places: readonly (number | null)[]) =>
      places.map((degrees, i) => ({ degrees, reads: [{ push: 4, air: 20 + i }] }));
    expect(accepted(clearanceByAir(at(0, 120, 240), shop)).harmonic).toBeNull();
    expect(accepted(clearanceByAir(at(0, 90, 180, null), shop)).harmonic).toBeNull();
    expect(accepted(clearanceByAir(at(0, 40, 80, 120), shop)).harmonic).toBeNull();
    expect(accepted(clearanceByAir(at(0, 90, 180, 270), shop)).harmonic).not.toBeNull();
  });

  it('finds the tilt that was put in, at any evenly read places', () => {
    const tilt = fc.record({
      level: fc.double({ min: 20, max: 60, noNaN: true }),
      amplitude: fc.double({ min: 0.1, max: 5, noNaN: true }),
      loosestAt: fc.double({ min: 0, max: 359, noNaN: true }),
      spots: fc.integer({ min: 4, max: 9 }),
    });
    fc.assert(
      fc.property(tilt, ({ level, amplitude, loosestAt, spots }) => {
        const reads = Array.from({ length: spots }, (_, i) => {
          const degrees = (360 * i) / spots;
          const air = level + amplitude * Math.cos(((degrees - loosestAt) * Math.PI) / 180);
          return { degrees, reads: [{ push: 4, air }] };
        });
        const { harmonic } = accepted(clearanceByAir(reads, shop));
        expectRelative(harmonic?.amplitude, amplitude, 1e-9);
        expect(Math.cos((((harmonic?.loosestAtDegrees ?? 0) - loosestAt) * Math.PI) / 180)).toBeGreaterThan(1 - 1e-9);
      }),
    );
  });

  it('says how often repeat scatter alone would show as much', () => {
    // Amplitude 1 at four spots, σ = 0.7 known: exp(−n A² / 4σ²) with n = 4, A² = 1.
    const exactly = { ...shop, repeatability: { standardDeviation: 0.7, degreesOfFreedom: Number.POSITIVE_INFINITY } };
    const found = accepted(clearanceByAir(around([4, 27], [5, 27], [5, 28], [4, 28]), exactly));
    expectRelative(found.harmonic?.probabilityByChance, Math.exp(-1 / 0.49), 1e-12);
  });
});

describe('what is no clearance', () => {
  it('air only has no total', () => {
    const airOnly = [32, 33, 33, 33].map((air, i) => ({ degrees: 90 * i, reads: [{ push: null, air }] }));
    expectRefusal(clearanceByAir(airOnly, shop), 'air-only');
  });

  it('no spots, a spot without reads, the same place twice, a negative travel', () => {
    expectRefusal(clearanceByAir([], shop), 'no-spots');
    expectRefusal(clearanceByAir([{ degrees: 0, reads: [] }], shop), 'no-reads');
    const place = (degrees: number) => ({ degrees, reads: [{ push: 4, air: 23 }] });
    expectRefusal(clearanceByAir([place(0), place(360)], shop), 'spot-twice');
    expectRefusal(clearanceByAir(around([-4, 23]), shop), 'negative');
  });
});

describe('a feeler gauge', () => {
  it('goes 41 and stops 42 is 41.5, half the step as a rectangle', () => {
    const found = accepted(feelerGap(41, 42));
    expect(found.value).toBe(41.5);
    expectRelative(found.combined, 0.5 / Math.sqrt(3), 1e-15);
  });

  it('a learned bias is taken off and its doubt added', () => {
    const found = accepted(feelerGap(41, 42, { value: 3, standardUncertainty: 0.6 }));
    expect(found.value).toBe(38.5);
    expectRelative(found.combined, Math.sqrt(0.25 / 3 + 0.36), 1e-15);
  });

  it('a feeler that stops before it goes is refused', () => {
    expectRefusal(feelerGap(42, 41), 'stops-before-it-goes');
    expectRefusal(feelerGap(42, 42), 'stops-before-it-goes');
  });
});

describe('the shop’s repeatability is pooled from its repeats', () => {
  it('as GUM H.5 pools ten days of five', () => {
    // [M] published within-day standard deviation 85 µV; [R] 84.8869836981 (its tenth digit is off: √7205.8).
    const days = [60, 77, 111, 101, 67, 93, 80, 73, 88, 86].map((standardDeviation) => ({
      standardDeviation,
      degreesOfFreedom: 4,
    }));
    const pooled = poolRepeatabilities(days);
    expect(pooled.degreesOfFreedom).toBe(40);
    expectRelative(pooled.standardDeviation, Math.sqrt(7205.8), 1e-14);
  });

  it('single reads say nothing about it', () => {
    expect(repeatabilityOfRepeats([[26], [28]])).toBeNull();
  });
});
