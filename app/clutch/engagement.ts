// One engagement: what it turns into heat, how long it slips, how hot the steels get. An estimate.
import { accept, type Result, refuse } from '../base/result.ts';

export type EngagementInput = {
  readonly inertia1_kgm2: number;
  readonly inertia2_kgm2: number;
  /** Signed: the other way round is negative. */
  readonly speed1_rpm: number;
  readonly speed2_rpm: number;
  readonly torque_Nm: number;
  readonly steelMass_kg: number;
  readonly specificHeat_J_kgK: number;
};

export type Engagement = {
  readonly energy_J: number;
  readonly slipTime_s: number;
  readonly finalSpeed_rad_s: number;
  readonly temperatureRise_K: number;
};

/**
 * Two inertias brought to one speed by a constant torque: E = I₁I₂(ω₁ − ω₂)² / 2(I₁ + I₂), t = I₁I₂|ω₁ − ω₂| / T(I₁ + I₂),
 * and all of E into the steels, ΔT = E / mc. Refuses anything but the speeds that is not above zero. No sum or
 * product is taken that could be more than a double holds where the answer is not.
 * Source: Shigley, Mechanical Engineering Design, 16-8 and 16-9.
 */
export function engagement(input: EngagementInput): Result<Engagement> {
  const { inertia1_kgm2, inertia2_kgm2, torque_Nm, steelMass_kg, specificHeat_J_kgK } = input;
  const amounts = [inertia1_kgm2, inertia2_kgm2, torque_Nm, steelMass_kg, specificHeat_J_kgK];
  if (!amounts.every((amount) => amount > 0)) {
    return refuse('not-positive', 'Inertias, torque, mass and specific heat must be more than zero.');
  }
  const speed1 = (input.speed1_rpm * Math.PI) / 30;
  const speed2 = (input.speed2_rpm * Math.PI) / 30;
  const slip = speed1 - speed2;
  const together = 1 / (1 + inertia2_kgm2 / inertia1_kgm2);
  const [smaller, larger] = [Math.min(inertia1_kgm2, inertia2_kgm2), Math.max(inertia1_kgm2, inertia2_kgm2)];
  const reduced = smaller / (1 + smaller / larger);
  const energy_J = (reduced * slip * slip) / 2;
  return accept({
    energy_J,
    slipTime_s: (reduced * Math.abs(slip)) / torque_Nm,
    finalSpeed_rad_s: speed2 + together * slip,
    temperatureRise_K:
      energy_J / Math.min(steelMass_kg, specificHeat_J_kgK) / Math.max(steelMass_kg, specificHeat_J_kgK),
  });
}
