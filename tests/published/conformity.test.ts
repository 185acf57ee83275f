// JCGM 106:2012 and ISO 14253-1. Marks as in measurement-uncertainty.test.ts.
import { describe, expect, it } from 'vitest';
import { acceptanceRisk } from '../../app/statistics/acceptance-risk.ts';
import { judgeConformity } from '../../app/statistics/conformity.ts';
import { expectRelative } from '../statistics/relative.ts';
import { accepted, expectRefusal } from '../statistics/result.ts';

describe('probability of conformity, JCGM 106', () => {
  it('one upper limit: −5.47 V against −5.40 V', () => {
    // [M] published 0.92; [R]
    const found = accepted(judgeConformity(-5.47, 0.05, { lower: null, upper: -5.4 }, 0));
    expectRelative(found.probabilityConforming, 0.9192433408, 1e-9);
    expect(found).toMatchObject({ probabilityBelow: 0, simple: 'accept', verdict: 'in' });
  });

  it('one lower limit: 509.7 kPa against 490 kPa', () => {
    // [M] published 0.99; [R]
    const found = accepted(judgeConformity(509.7, 8.6, { lower: 490, upper: null }, 0));
    expectRelative(found.probabilityConforming, 0.9890095474, 1e-9);
  });

  it('two limits: viscosity 13.6 between 12.5 and 16.3', () => {
    // [M] published 0.66; [R]
    const found = accepted(judgeConformity(13.6, 1.8, { lower: 12.5, upper: 16.3 }, 0));
    expectRelative(found.probabilityConforming, 0.6626297865, 1e-9);
  });

  it('a guard of 2 standard uncertainties lets 2.3 % through at its edge, one of 1.645 lets 5 % through', () => {
    // [M] published 2.3 % and 5 %; [R]
    expectRelative(
      accepted(judgeConformity(0.98, 0.01, { lower: null, upper: 1 }, 2)).probabilityAbove,
      0.02275013195,
      1e-9,
    );
    const edge = accepted(judgeConformity(1 - 0.01644853627, 0.01, { lower: null, upper: 1 }, 1.644853627));
    expectRelative(edge.probabilityAbove, 0.05, 1e-8);
  });

  it('0.900 ± 0.030 mm between 0.65 and 0.95 is in for ISO 14253-1’s guard and too close to call for 2 u', () => {
    // [R]
    const limits = { lower: 0.65, upper: 0.95 };
    const guarded = accepted(judgeConformity(0.9, 0.03, limits, 2));
    expectRelative(guarded.probabilityBelow, 3.929873435e-17, 1e-9);
    expectRelative(guarded.probabilityAbove, 0.04779035227, 1e-9);
    expectRelative(guarded.probabilityConforming, 0.9522096477, 1e-9);
    expectRelative(guarded.acceptance?.lower, 0.71, 1e-14);
    expectRelative(guarded.acceptance?.upper, 0.89, 1e-14);
    expect(guarded).toMatchObject({ simple: 'accept', verdict: 'too close to call', by: null });
    const iso = accepted(judgeConformity(0.9, 0.03, limits, 1.644853627));
    expectRelative(iso.acceptance?.lower, 0.6993456088, 1e-9);
    expectRelative(iso.acceptance?.upper, 0.9006543912, 1e-9);
    expect(iso.verdict).toBe('in');
  });
});

describe('global risk, JCGM 106 9.5: resistors of 1500 Ω', () => {
  const process = {
    processMean: 1500,
    processStandardDeviation: 0.12,
    measurementStandardUncertainty: 0.04,
    lower: 1499.8,
    upper: 1500.2,
  };

  it('with a guarded acceptance', () => {
    // [S] inputs from a public worked script; [M] published about 0.01, 0.07 and 0.90; [R]
    const risk = accepted(acceptanceRisk({ ...process, acceptLower: 1499.82, acceptUpper: 1500.18 }));
    expectRelative(risk.consumerRisk, 0.00987829152177, 1e-10);
    expectRelative(risk.producerRisk, 0.0690265104615, 1e-10);
    expectRelative(risk.processConforming, 0.904419295454, 1e-10);
  });

  it('with acceptance at the tolerance', () => {
    // [R]
    const risk = accepted(acceptanceRisk({ ...process, acceptLower: 1499.8, acceptUpper: 1500.2 }));
    expectRelative(risk.consumerRisk, 0.018942206717, 1e-10);
    expectRelative(risk.producerRisk, 0.0372078001781, 1e-10);
  });

  it('refuses an empty acceptance interval', () => {
    expectRefusal(acceptanceRisk({ ...process, acceptLower: 1500.1, acceptUpper: 1499.9 }), 'empty-acceptance');
  });
});

describe('large values with a small spread', () => {
  it('half a unit outside a limit of 1e12 is proven outside, however large the value', () => {
    // By hand: 1e12 − 0.5 lies 50 standard uncertainties of 0.01 below its limit.
    const found = accepted(judgeConformity(999_999_999_999.5, 0.01, { lower: 1e12, upper: 1_000_000_000_010 }, 2));
    expect(found).toMatchObject({ verdict: 'tight', simple: 'reject', by: 0.5 });
  });

  it('a value on its limit conforms although decimals miss their double', () => {
    // By hand: 1.01 − 2 · 0.03 is 0.95, which doubles put a last digit off.
    expect(accepted(judgeConformity(0.95, 0.03, { lower: 0.8, upper: 1.01 }, 2)).verdict).toBe('in');
  });
});
