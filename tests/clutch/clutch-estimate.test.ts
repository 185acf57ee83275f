// The estimates of a clutch from the figures of a sheet, on the invented unit KX3 and by hand.
import { describe, expect, test } from 'vitest';
import type { ClutchFigures } from '../../app/clutch/clutch.contract.ts';
import { clutchEstimate, frictionSurfaces } from '../../app/clutch/clutch-estimate.ts';
import { clutchField, clutchFigureList, clutchProblem, noClutchFigures } from '../../app/clutch/clutch-figures.ts';
import { clutchWords, estimateSentences } from '../../app/clutch/clutch-words.ts';
import { parseAmount } from '../../app/quantities/parse-amount.ts';
import { ask } from '../headless/ask-calculator.ts';

const thou = (value: number) => Math.round(value * 25_400);
const shop = { lengthUnit: 'thou', decimalMark: '.' } as const;

/** As a person types it into the field of that figure. */
function typed(figures: Partial<Record<keyof ClutchFigures, string>>): ClutchFigures {
  const read = clutchFigureList.flatMap((figure) => {
    const text = figures[figure.name];
    if (text === undefined) return [];
    const amount = parseAmount(text, clutchField(figure, shop));
    if (!amount.ok) throw new Error(amount.refusal.message);
    return [[figure.name, amount.value] as const];
  });
  return { ...noClutchFigures, ...Object.fromEntries(read) };
}

// example-unit: 5.000 in outside, 3.000 in inside, springs 192 lbf installed, checked at 40 psi.
const forward = typed({ pistonOutside_nm: '5.000', pistonInside_nm: '3', springs_mN: '192' });
const facts = {
  figures: forward,
  surfaces: 8,
  checkingPressure_Pa: 275_790,
  clearance: { today_nm: thou(25.5), from: 'as read' as const, low_nm: thou(20), high_nm: thou(30) },
  load: null,
};
const holding = typed({
  pistonOutside_nm: '5',
  pistonInside_nm: '3',
  springs_mN: '192 lb',
  frictionOutside_nm: '6',
  frictionInside_nm: '5',
  friction_millionths: '.14',
  applyPressure_Pa: '160',
  gearShare_millionths: '1',
});
const load = { engineTorque_mNm: 298_280, converterRatio_millionths: 1_900_000 };

describe('the Forward of the invented unit', () => {
  test('starts at 15.3 psi; 40 psi push with 503 lbf, 311 net', () => {
    const { piston } = clutchEstimate(facts);
    const words = clutchWords(shop);
    expect(words.area(piston.known!.area_m2)).toBe('12.566 in²');
    expect(words.pressure(piston.known!.startingPressure_Pa)).toBe('15.3 psi');
    expect(words.force(piston.known!.checkingForce_N)).toBe('503 lbf');
    expect(words.force(piston.known!.checkingNet_N)).toBe('311 lbf');
  });

  test.each([
    [25.5, '0.320 in³', 5.25],
    [32, '0.402 in³', 6.59],
  ])('fills at %s thou with %s', (clearance, volume, cubicCentimetres) => {
    const at = { ...facts.clearance, today_nm: thou(clearance) };
    const { filling } = clutchEstimate({ ...facts, clearance: at });
    const { today, rows } = filling.known!;
    expect(clutchWords(shop).volume(today.fillVolume_m3)).toBe(volume);
    expect(today.fillVolume_m3 * 1e6).toBeCloseTo(cubicCentimetres, 2);
    expect(today.fillTime_s).toBeNull();
    expect(today.dragRelativeToToday).toBe(1);
    expect(rows[0]!.clearance_m).toBeLessThan(thou(20) * 1e-9);
    expect(rows.at(-1)!.clearance_m).toBeGreaterThan(thou(30) * 1e-9);
  });

  test('says what it waits for, by the names of the fields', () => {
    const { torque, shift } = clutchEstimate(facts);
    expect(torque.missing).toEqual(['Lining, outside', 'Lining, inside', 'Friction coefficient', 'Apply pressure']);
    expect(shift.missing).toContain('Torque it holds');
    expect(clutchEstimate({ ...facts, figures: null, clearance: null })).toMatchObject({
      piston: { known: null, missing: ['Piston, outside', 'Piston, inside', 'Return springs, installed'] },
      filling: { known: null, missing: ['Piston, outside', 'Piston, inside', 'Clearance'] },
    });
  });
});

describe('torque it holds', () => {
  // By hand, lbf and in: A = 4π = 12.56637; 160 A − 192 = 1818.62; 0.14 · 1818.62 · 8 = 2036.85 lbf. Mean radius by
  // wear (6 + 5)/4 = 2.75, by pressure (36 + 30 + 25)/33 = 2.757576. So 5601.35 and 5616.78 lb-in, 466.78 and 468.06
  // lb-ft. Asked 220 · 1.9 = 418.
  test('466.8 lb-ft by wear and 468.1 by pressure, 1.117 and 1.120 times what is asked', () => {
    const { torque } = clutchEstimate({ ...facts, figures: holding, load });
    const poundFoot_Nm = 1.3558179483314;
    expect(torque.known!.wear_Nm / poundFoot_Nm).toBeCloseTo(466.78, 2);
    expect(torque.known!.pressure_Nm / poundFoot_Nm).toBeCloseTo(468.06, 2);
    expect(torque.known!.asked_Nm! / poundFoot_Nm).toBeCloseTo(418, 2);
    expect(torque.known!.wearMargin).toBeCloseTo(1.1167, 4);
    expect(torque.known!.pressureMargin).toBeCloseTo(1.1198, 4);
  });

  test('a spring rate takes off the travel: 200 lbf/in over 25.5 thou are 5.1 lbf', () => {
    const rated = { ...holding, springRate_mN_m: typed({ springRate_mN_m: '200' }).springRate_mN_m };
    const [bare, less] = [holding, rated].map((figures) => clutchEstimate({ ...facts, figures }).torque.known!.force_N);
    expect((bare! - less!) / 4.4482216152605).toBeCloseTo(5.1, 4);
  });

  test('springs that hold back the apply pressure leave nothing to hold with, and it says so', () => {
    const weak = { ...holding, applyPressure_Pa: 100_000 };
    expect(clutchEstimate({ ...facts, figures: weak }).torque).toMatchObject({
      known: null,
      missing: [],
      problem: 'The force on the plates must be more than zero.',
    });
  });

  test('no margin without a load, and none without a share', () => {
    expect(clutchEstimate({ ...facts, figures: holding }).torque.known).toMatchObject({ asked_Nm: null });
    const unshared = { ...holding, gearShare_millionths: null };
    expect(clutchEstimate({ ...facts, figures: unshared, load }).torque.known).toMatchObject({ wearMargin: null });
  });
});

test('one engagement, as the reference example with its speeds and inertias has it', () => {
  // I 0.25 and 1.1 kg·m², 5200 and 3400 rpm, 1.25 kg of steel at 460 J/(kg·K): 3618.854947 J, 6.293660778 K (checked by
  // integration); slipping at T it takes 38.397 N·m·s / T.
  const figures = {
    ...holding,
    ...{ inertia1_mg_m2: 250_000, inertia2_mg_m2: 1_100_000, speed1_rpm: 5200, speed2_rpm: 3400 },
    steelMass_mg: 1_250_000,
  };
  const { shift, torque } = clutchEstimate({ ...facts, figures });
  expect(shift.known!.energy_J).toBeCloseTo(3618.854947, 5);
  expect(shift.known!.temperatureRise_K).toBeCloseTo(6.293660778, 8);
  expect(shift.known!.slipTime_s * torque.known!.wear_Nm).toBeCloseTo(0.1238620759 * 310, 5);
});

describe('the numbers are the calculator’s', () => {
  const estimate = clutchEstimate({ ...facts, figures: { ...holding, flow_uL_min: 1_892_706 }, load });
  const ring = { outerDiameter_m: 0.127, innerDiameter_m: 0.0762 };

  test('force', async () => {
    const asked = await ask('piston-force', { ...ring, pressure_Pa: 275_790, spring_N: 854.059 });
    const { area_m2, startingPressure_Pa, checkingForce_N, checkingNet_N } = estimate.piston.known!;
    expect(asked.area_m2).toBeCloseTo(area_m2, 12);
    expect(asked.startingPressure_Pa).toBeCloseTo(startingPressure_Pa, 6);
    expect(asked.pressureForce_N).toBeCloseTo(checkingForce_N, 8);
    expect(asked.netForce_N).toBeCloseTo(checkingNet_N, 8);
  });

  test('torque', async () => {
    const { force_N, wear_Nm, pressure_Nm } = estimate.torque.known!;
    const lining = { outerDiameter_m: 0.1524, innerDiameter_m: 0.127, friction: 0.14, surfaces: 8, force_N };
    expect((await ask('torque-capacity', { ...lining, theory: 'uniform wear' })).torque_Nm).toBeCloseTo(wear_Nm, 8);
    expect((await ask('torque-capacity', { ...lining, theory: 'uniform pressure' })).torque_Nm).toBeCloseTo(
      pressure_Nm,
      8,
    );
  });
});

test('surfaces are counted from the slots', () => {
  const slots = (kinds: string) =>
    [...kinds].map((kind) => ({ kind: kind === 'f' ? ('friction' as const) : ('steel' as const) }));
  expect(frictionSurfaces(slots('sfsfsfsfb'))).toBe(8);
  expect(frictionSurfaces(slots('sffs'))).toBe(2);
  expect(frictionSurfaces(slots('s'))).toBe(0);
});

test('rings inside out and negative amounts are said', () => {
  expect(clutchProblem({ ...noClutchFigures, pistonOutside_nm: 1, pistonInside_nm: 1 })).toMatch(/piston/);
  expect(clutchProblem({ ...noClutchFigures, frictionOutside_nm: 1, frictionInside_nm: 2 })).toMatch(/lining/);
  expect(clutchProblem(holding)).toBeUndefined();
});

test('the report says it in sentences, and nothing where nothing is stated', () => {
  const say = (figures: ClutchFigures | null) =>
    estimateSentences(clutchEstimate({ ...facts, figures, load }), 275_790, shop);
  expect(say(holding)).toEqual([
    'The piston starts at 15.3 psi plus seal drag; 40 psi push with 503 lbf, 311 lbf net of the springs.',
    'It holds 467 lb-ft by uniform wear and 468 lb-ft by uniform pressure, 1.12 times the 418 lb-ft asked of it.',
    'It fills with 0.320 in³.',
  ]);
  expect(say(null)).toEqual([]);
});
