// Textbook clutches. [S] read in a public copy, [M] published value quoted from memory, [R] computed with other software.
import { describe, expect, it } from 'vitest';
import { engagement } from '../../app/clutch/engagement.ts';
import { pistonForce } from '../../app/clutch/piston-force.ts';
import { torqueCapacity } from '../../app/clutch/torque-capacity.ts';
import { expectRelative } from '../statistics/relative.ts';
import { accepted } from '../statistics/result.ts';

describe('torque capacity', () => {
  const ring = (outer: number, inner: number) => ({ outerDiameter_m: outer, innerDiameter_m: inner });

  it('Bhandari, Design of Machine Elements, examples 11.1, 11.2 and 11.8', () => {
    // [S] FOSSEE Scilab textbook companion 764, chapter 11
    const wear = accepted(torqueCapacity('uniform wear', ring(0.2, 0.1), 0.2, 1, { maximumPressure_Pa: 1e6 }));
    expectRelative(wear.force_N, 15707.963268, 1e-10);
    expectRelative(wear.torque_Nm, 235.619449019, 1e-10);
    const even = accepted(torqueCapacity('uniform pressure', ring(0.2, 0.1), 0.2, 1, { maximumPressure_Pa: 1e6 }));
    expectRelative(even.force_N, 23561.944902, 1e-10);
    expectRelative(even.torque_Nm, 366.519142919, 1e-10);
    const discs = accepted(torqueCapacity('uniform wear', ring(0.15, 0.075), 0.1, 8, { maximumPressure_Pa: 3e5 }));
    expectRelative(discs.force_N, 2650.718801, 1e-9);
    expectRelative(discs.torque_Nm, 119.282346066, 1e-9);
  });

  it('Shigley, problem 16–17: 4 kN on one pair', () => {
    // [M] published 127.5 and 128.8 N·m; [R]
    const pressing = { force_N: 4000 };
    expectRelative(
      accepted(torqueCapacity('uniform wear', ring(0.25, 0.175), 0.3, 1, pressing)).torque_Nm,
      127.5,
      1e-12,
    );
    expectRelative(
      accepted(torqueCapacity('uniform pressure', ring(0.25, 0.175), 0.3, 1, pressing)).torque_Nm,
      128.8235294,
      1e-9,
    );
  });

  it('Shigley, problem 16–18: six planes, 4 to 6.5 in at 120 psi', () => {
    // [M] published 1885 lbf and 7125 lbf·in; [R]. 1 psi = 6894.757293168361 Pa, 1 in = 0.0254 m.
    const psi = 6894.757293168361;
    const found = accepted(
      torqueCapacity('uniform wear', ring(6.5 * 0.0254, 4 * 0.0254), 0.24, 6, { maximumPressure_Pa: 120 * psi }),
    );
    expectRelative(found.force_N / 4.4482216152605, 1884.955592, 1e-9);
    expectRelative(found.torque_Nm / 0.1129848290276167, 7125.132138, 1e-9);
  });
});

describe('piston and engagement', () => {
  it('the ring’s pressure and a spinning fluid’s share of it', () => {
    // [R] integral and closed form agree
    const ring = { outerDiameter_m: 0.16, innerDiameter_m: 0.11 };
    const still = accepted(pistonForce(ring, 1e6, 900, null));
    expectRelative(still.area_m2, 0.01060287521, 1e-9);
    expectRelative(still.netForce_N, 9702.875206, 1e-9);
    const spinning = { speed_rpm: 6000, density_kg_m3: 850, freeSurfaceRadius_m: 0.04 };
    const turning = accepted(pistonForce(ring, 0, 900, spinning));
    expectRelative(turning.centrifugalForce_N, 5537.0912, 1e-8);
    expectRelative(turning.netForce_N, 4637.0912, 1e-8);
  });

  it('Shigley 16-8 and 16-9: energy, slip time, final speed, temperature', () => {
    // [R] checked by integration
    const found = accepted(
      engagement({
        inertia1_kgm2: 0.25,
        inertia2_kgm2: 1.1,
        speed1_rpm: 5200,
        speed2_rpm: 3400,
        torque_Nm: 310,
        steelMass_kg: 1.25,
        specificHeat_J_kgK: 460,
      }),
    );
    expectRelative(found.energy_J, 3618.854947, 1e-9);
    expectRelative(found.slipTime_s, 0.1238620759, 1e-9);
    expectRelative(found.finalSpeed_rad_s, 390.9537524, 1e-9);
    expectRelative(found.temperatureRise_K, 6.293660778, 1e-9);
  });

  it('a rotor brought up to speed takes ½Iω² as heat, Bhandari example 11.11', () => {
    // [S] 106.591728 kJ: 150 kg with k = 250 mm at 1440 rpm, against a shaft too heavy to slow down.
    const found = accepted(
      engagement({
        inertia1_kgm2: 150 * 0.25 ** 2,
        inertia2_kgm2: 1e12,
        speed1_rpm: 0,
        speed2_rpm: 1440,
        torque_Nm: 35.34291735,
        steelMass_kg: 1,
        specificHeat_J_kgK: 460,
      }),
    );
    expectRelative(found.energy_J, 106591.7275, 1e-9);
    expect(found.slipTime_s).toBeCloseTo(40, 6);
  });
});
