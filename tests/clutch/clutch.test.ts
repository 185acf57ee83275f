// The clutch's arithmetic on the invented unit KX3, and what it refuses.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { engagement } from '../../app/clutch/engagement.ts';
import { fillAndDrag } from '../../app/clutch/fill-and-drag.ts';
import { annulusArea, pistonForce } from '../../app/clutch/piston-force.ts';
import { torqueCapacity } from '../../app/clutch/torque-capacity.ts';
import { expectRelative } from '../statistics/relative.ts';
import { accepted, expectRefusal } from '../statistics/result.ts';

const inch = 0.0254;
const psi = 6894.757293168361;
const poundForce = 4.4482216152605;
const forward = { outerDiameter_m: 5 * inch, innerDiameter_m: 3 * inch };

describe('the Forward piston of the invented unit', () => {
  it('has 12.566 in², starts at 15.3 psi, and 40 psi on it are 503 lbf, 311 net of its springs', () => {
    const found = accepted(pistonForce(forward, 40 * psi, 192 * poundForce, null));
    expect(found.area_m2 / inch ** 2).toBeCloseTo(12.566, 3);
    expect(found.startingPressure_Pa / psi).toBeCloseTo(15.3, 1);
    expect(found.pressureForce_N / poundForce).toBeCloseTo(502.65, 1);
    expect(found.netForce_N / poundForce).toBeCloseTo(310.65, 1);
  });

  it('fills 0.320 in³ at 25.5 thou and 0.402 in³ at 32.0, and drags less when it is looser', () => {
    const found = accepted(fillAndDrag([25.5 * 0.001 * inch, 32 * 0.001 * inch], 32 * 0.001 * inch, forward, null));
    expect(found[0]!.fillVolume_m3 / inch ** 3).toBeCloseTo(0.32, 3);
    expect(found[1]!.fillVolume_m3 / inch ** 3).toBeCloseTo(0.402, 3);
    expectRelative(found[0]?.dragRelativeToToday, 32 / 25.5, 1e-14);
    expect(found[0]?.fillTime_s).toBeNull();
  });
});

describe('inertias whose sum is more than a double holds', () => {
  it('come to the middle of their speeds, and E = Iω²/4', () => {
    // By hand: equal inertias I, 0.2 rpm apart, so ω = 0.2π/30; E = I/2 · ω²/2, t = I/2 · ω/T, both at 0.2 rpm in the end.
    const found = accepted(
      engagement({
        inertia1_kgm2: 9e307,
        inertia2_kgm2: 9e307,
        speed1_rpm: 0.1,
        speed2_rpm: 0.3,
        torque_Nm: 310,
        steelMass_kg: 1e200,
        specificHeat_J_kgK: 1e200,
      }),
    );
    const apart = (0.2 * Math.PI) / 30;
    expectRelative(found.energy_J, 2.25e307 * apart * apart, 1e-14);
    expectRelative(found.slipTime_s, (4.5e307 / 310) * apart, 1e-14);
    expectRelative(found.finalSpeed_rad_s, (0.2 * Math.PI) / 30, 1e-14);
    expectRelative(found.temperatureRise_K, 2.25e-93 * apart * apart, 1e-14);
  });
});

describe('whatever the clutch', () => {
  const size = fc.double({ min: 0.01, max: 0.5, noNaN: true });

  it('spinning fluid pushes as the sum over thin rings says', () => {
    fc.assert(
      fc.property(size, size, fc.double({ min: 0, max: 1, noNaN: true }), (inner, width, share) => {
        const ring = { outerDiameter_m: 2 * (inner + width), innerDiameter_m: 2 * inner };
        const fluid = { speed_rpm: 3000, density_kg_m3: 850, freeSurfaceRadius_m: inner * share };
        const angularSpeed = 100 * Math.PI;
        const rings = 2000;
        let sum = 0;
        for (let i = 0; i < rings; i++) {
          const radius = inner + (width * (i + 0.5)) / rings;
          const pressure = 0.5 * 850 * angularSpeed ** 2 * (radius ** 2 - fluid.freeSurfaceRadius_m ** 2);
          sum += pressure * 2 * Math.PI * radius * (width / rings);
        }
        expectRelative(accepted(pistonForce(ring, 0, 0, fluid)).centrifugalForce_N, sum, 1e-5);
      }),
    );
  });

  it('uniform pressure acts at no smaller a radius than uniform wear, and a thin ring is the same by both', () => {
    fc.assert(
      fc.property(size, size, (inner, width) => {
        const ring = { outerDiameter_m: inner + width, innerDiameter_m: inner };
        const by = (theory: 'uniform wear' | 'uniform pressure', of = ring) =>
          accepted(torqueCapacity(theory, of, 0.1, 2, { force_N: 1000 })).torque_Nm;
        expect(by('uniform pressure')).toBeGreaterThanOrEqual(by('uniform wear') * (1 - 1e-12));
        const thin = { outerDiameter_m: inner * (1 + 1e-6), innerDiameter_m: inner };
        expectRelative(by('uniform pressure', thin), by('uniform wear', thin), 1e-9);
      }),
    );
  });

  it('an engagement loses exactly the energy that is missing afterwards', () => {
    const speed = fc.double({ min: -6000, max: 6000, noNaN: true });
    fc.assert(
      fc.property(size, size, speed, speed, (inertia1_kgm2, inertia2_kgm2, speed1_rpm, speed2_rpm) => {
        const found = accepted(
          engagement({
            inertia1_kgm2,
            inertia2_kgm2,
            speed1_rpm,
            speed2_rpm,
            torque_Nm: 100,
            steelMass_kg: 1,
            specificHeat_J_kgK: 460,
          }),
        );
        const energy = (inertia: number, angularSpeed: number) => (inertia * angularSpeed ** 2) / 2;
        const turn = Math.PI / 30;
        const before = energy(inertia1_kgm2, speed1_rpm * turn) + energy(inertia2_kgm2, speed2_rpm * turn);
        const after = energy(inertia1_kgm2 + inertia2_kgm2, found.finalSpeed_rad_s);
        expect(found.energy_J).toBeCloseTo(before - after, 5);
      }),
    );
  });
});

describe('what the clutch’s arithmetic refuses', () => {
  it('diameters that make no ring, negative amounts, fluid outside the inner radius', () => {
    expectRefusal(annulusArea({ outerDiameter_m: 0.1, innerDiameter_m: 0.1 }), 'diameters');
    expectRefusal(pistonForce({ outerDiameter_m: 0.1, innerDiameter_m: -0.1 }, 1, 1, null), 'diameters');
    expectRefusal(pistonForce(forward, -1, 1, null), 'negative');
    const fluid = { speed_rpm: 100, density_kg_m3: 850, freeSurfaceRadius_m: 2 * inch };
    expectRefusal(pistonForce(forward, 1, 1, fluid), 'free-surface');
  });

  it('a largest pressure on a full disc that wears evenly, which has none; any other full disc is one', () => {
    const disc = { outerDiameter_m: 0.2, innerDiameter_m: 0 };
    expectRefusal(torqueCapacity('uniform wear', disc, 0.1, 2, { maximumPressure_Pa: 1e6 }), 'endless-pressure');
    // By hand: mean radius D/4 by wear, D/3 by pressure; F = p · π/4 · D².
    expect(accepted(torqueCapacity('uniform wear', disc, 0.1, 2, { force_N: 1000 })).torque_Nm).toBeCloseTo(10, 12);
    expect(accepted(torqueCapacity('uniform pressure', disc, 0.1, 2, { force_N: 1500 })).torque_Nm).toBeCloseTo(20, 12);
    const pressed = accepted(torqueCapacity('uniform pressure', disc, 0.1, 2, { maximumPressure_Pa: 1e6 }));
    expect(pressed.force_N).toBeCloseTo(Math.PI * 1e4, 8);
  });

  it('half a friction surface, no friction, no force, no flow', () => {
    expectRefusal(torqueCapacity('uniform wear', forward, 0.1, 1.5, { force_N: 1 }), 'surfaces');
    expectRefusal(torqueCapacity('uniform wear', forward, 0, 1, { force_N: 1 }), 'not-positive');
    expectRefusal(torqueCapacity('uniform wear', forward, 0.1, 1, { force_N: 0 }), 'not-positive');
    expectRefusal(fillAndDrag([0.001], 0.001, forward, 0), 'not-positive');
    expectRefusal(fillAndDrag([], 0.001, forward, null), 'too-few');
  });
});
