// Survival and association. [S] read in a public copy, [R] computed with R 4.2.2 (survival 3.5-3) and cross-checked with
// statsmodels, [M] published value quoted from memory.
import { describe, expect, it } from 'vitest';
import { cox } from '../../app/statistics/cox.ts';
import { falseDiscovery } from '../../app/statistics/false-discovery.ts';
import { fisher } from '../../app/statistics/fisher.ts';
import { kaplanMeier } from '../../app/statistics/kaplan-meier.ts';
import { logRank } from '../../app/statistics/log-rank.ts';
import { proportion } from '../../app/statistics/proportion.ts';
import { weibull } from '../../app/statistics/weibull.ts';
import { expectAllRelative, expectRelative } from '../statistics/relative.ts';
import { accepted } from '../statistics/result.ts';
import { lung } from './lung.ts';

/** Times; a minus says that following ended there without the event. */
const followed = (...times: number[]) => ({
  time: times.map(Math.abs),
  event: times.map((time) => (time > 0 ? 1 : 0)),
});

const sixMp = [6, 6, 6, -6, 7, -9, 10, -10, -11, 13, 16, -17, -19, -20, 22, 23, -25, -32, -32, -34, -35];
const placebo = [1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23];
const both = followed(...sixMp, ...placebo);
const isPlacebo = [...sixMp.map(() => 0), ...placebo.map(() => 1)];

/** t, at risk, events, S, Greenwood, lower, upper, cumulative hazard and its standard error. */
type Row = [number, number, number, number, number, number, number, number, number];

function expectSteps(times: number[], rows: Row[]) {
  const { steps } = accepted(kaplanMeier(followed(...times)));
  rows.forEach(([time, atRisk, events, survival, standardError, lower, upper, hazard, hazardError], i) => {
    const step = steps[i]!;
    expect(step).toMatchObject({ time, atRisk, events });
    expectRelative(step.survival, survival, 1e-9);
    expectRelative(step.standardError, standardError, 1e-9);
    expectRelative(step.lower, lower, 5e-8);
    expectRelative(step.upper, upper, 5e-8);
    expectRelative(step.cumulativeHazard, hazard, 1e-9);
    expectRelative(step.cumulativeHazardStandardError, hazardError, 1e-9);
  });
  return steps;
}

describe('Freireich’s 6-MP against placebo', () => {
  it('survival under 6-MP', () => {
    // [M] published 0.857 0.807 0.753 0.690 0.627 0.538 0.448; [R]
    const steps = expectSteps(sixMp, [
      [6, 21, 3, 0.8571428571, 0.07636035483, 0.61971796, 0.95155175, 0.1428571429, 0.08247860988],
      [7, 17, 1, 0.8067226891, 0.08693528518, 0.56314656, 0.92280902, 0.2016806723, 0.1013061138],
      [10, 15, 1, 0.7529411765, 0.09634965299, 0.50319951, 0.88936184, 0.2683473389, 0.1212739591],
      [13, 12, 1, 0.6901960784, 0.1068147078, 0.43161022, 0.84906596, 0.3516806723, 0.147145566],
      [16, 11, 1, 0.6274509804, 0.1140538653, 0.36751086, 0.80491219, 0.4425897632, 0.1729632342],
      [22, 7, 1, 0.5378151261, 0.1282337517, 0.26777894, 0.74679072, 0.585446906, 0.2243311028],
      [23, 6, 1, 0.4481792717, 0.1345914568, 0.18805201, 0.68014263, 0.7521135727, 0.2794677467],
    ]);
    expect(steps).toHaveLength(7);
    expect(accepted(kaplanMeier(followed(...sixMp))).median).toBe(23);
  });

  it('survival under placebo, to the last one', () => {
    // [R]
    const steps = expectSteps(placebo, [
      [1, 21, 2, 0.9047619048, 0.06405644849, 0.67004588, 0.97529415, 0.09523809524, 0.06734350297],
      [2, 19, 2, 0.8095238095, 0.08568908675, 0.56890506, 0.92388883, 0.2005012531, 0.1003758616],
      [3, 17, 1, 0.7619047619, 0.09294286409, 0.51939142, 0.89325711, 0.2593247825, 0.1163422589],
      [4, 16, 2, 0.6666666667, 0.1028689, 0.42535044, 0.82504401, 0.3843247825, 0.1461096205],
      [5, 14, 2, 0.5714285714, 0.1079898494, 0.33797695, 0.74924071, 0.5271819254, 0.177629116],
      [8, 12, 4, 0.380952381, 0.1059711696, 0.18306655, 0.57778868, 0.8605152587, 0.243577258],
      [11, 8, 2, 0.2857142857, 0.09858079419, 0.11656133, 0.48181965, 1.110515259, 0.3009649159],
      [12, 6, 2, 0.1904761905, 0.08568908675, 0.059481701, 0.37743489, 1.443848592, 0.3822766487],
      [15, 4, 1, 0.1428571429, 0.07636035483, 0.035657355, 0.32116157, 1.693848592, 0.4567662818],
      [17, 3, 1, 0.09523809524, 0.06405644849, 0.01625926, 0.26124998, 2.027181925, 0.5654613579],
      [22, 2, 1, 0.04761904762, 0.04647143205, 0.003324463, 0.19704491, 2.527181925, 0.7548155717],
    ]);
    expect(steps.at(-1)).toMatchObject({ time: 23, survival: 0, standardError: null, lower: null, upper: null });
    expectRelative(steps.at(-1)?.cumulativeHazard, 3.527181925, 1e-9);
    expect(accepted(kaplanMeier(followed(...placebo))).median).toBe(8);
  });

  it('log-rank', () => {
    // [M] published 16.79; [R]
    const found = accepted(logRank(both, isPlacebo));
    expect(found.groups.map((group) => group.observed)).toEqual([9, 21]);
    expectAllRelative(
      found.groups.map((group) => group.expected),
      [19.25050095, 10.74949905],
      1e-9,
    );
    expectRelative(found.chiSquare, 16.79294099, 1e-9);
    expect(found.degreesOfFreedom).toBe(1);
    expectRelative(found.p, 4.168809109e-5, 1e-8);
  });

  it('Cox’s model with either handling of ties', () => {
    // [M] published 1.509 (0.410) and 1.572 (0.412); [R]
    const breslow = accepted(cox(both, isPlacebo, 'breslow'));
    expectRelative(breslow.coefficient, 1.509191413, 1e-9);
    expectRelative(breslow.standardError, 0.4095644064, 1e-9);
    expectRelative(breslow.hazardRatio, 4.523072016, 1e-9);
    expectAllRelative(breslow.hazardRatioInterval, [2.0268035, 10.093815], 5e-8);
    expectRelative(breslow.z, 3.684869557, 1e-9);
    expectRelative(breslow.p, 0.0002288197991, 1e-9);
    expectAllRelative(breslow.logLikelihood, [-93.98505048, -86.37962207], 1e-9);
    expectRelative(breslow.likelihoodRatio, 15.21085681, 1e-9);
    expectRelative(breslow.score, 15.93053956, 1e-9);
    const efron = accepted(cox(both, isPlacebo, 'efron'));
    expectRelative(efron.coefficient, 1.572125149, 1e-9);
    expectRelative(efron.standardError, 0.4123967177, 1e-9);
    expectAllRelative(efron.hazardRatioInterval, [2.1465082, 10.809311], 5e-8);
    expectRelative(efron.p, 0.000137753762, 1e-9);
    expectAllRelative(efron.logLikelihood, [-93.18427, -85.00842458], 1e-9);
    expectRelative(efron.likelihoodRatio, 16.35169084, 1e-9);
    expectRelative(efron.score, 17.2465368, 1e-9);
  });
});

describe('Weibull fits with profile limits', () => {
  it.each([
    // [R] survreg and an own root of the profile score.
    [
      '6-MP',
      sixMp,
      1.353734524,
      33.76515097,
      -41.65867848,
      [0.7236750007, 2.203676487],
      [21.8478415, 76.86374477],
      [6.405064644, 25.75650301, 30.94712004],
    ],
    [
      'placebo',
      placebo,
      1.370499859,
      9.482141256,
      -64.92010759,
      [0.9467938301, 1.879719482],
      [6.638233939, 13.27103593],
      [1.835662361, 7.257098237, 8.672303888],
    ],
    // [S] NIST/SEMATECH 8.4.1.3 quotes shape 1.7208, scale 606.5280; [R]
    [
      '20 units over 500 hours',
      [54, 187, 216, 240, 244, 335, 361, 373, 375, 386, ...new Array<number>(10).fill(-500)],
      1.720797261,
      606.527558,
      -75.13461816,
      [0.9056453588, 2.885737866],
      [437.5567454, 1118.877625],
      [164.0224387, 490.1737812, 540.7370255],
    ],
    // [S] shock absorbers, O’Connor 1985 by Meeker and Escobar 1998; [M] published scale 27719, shape 3.16; [R]
    [
      '38 shock absorbers in km',
      [
        6700, -6950, -7820, -8790, 9120, -9660, -9820, -11310, -11690, -11850, -11880, -12140, 12200, -12870, 13150,
        -13330, -13470, -14040, 14300, 17520, -17540, -17890, -18450, -18960, -18980, -19410, 20100, -20100, -20150,
        -20320, 20900, 22700, -23490, 26510, -27410, 27490, -27890, -28100,
      ],
      3.160470315,
      27718.71813,
      -123.9953612,
      [1.89853217, 4.771390781],
      [23330.06611, 37961.91084],
      [13600.03472, 24683.62549, 24811.53716],
    ],
  ] as const)('%s', (_, times, shape, scale, logLikelihood, shapeInterval, scaleInterval, lives) => {
    const found = accepted(weibull(followed(...times)));
    expectRelative(found.shape, shape, 2e-9);
    expectRelative(found.scale, scale, 2e-9);
    expectRelative(found.logLikelihood, logLikelihood, 1e-9);
    expectAllRelative(found.shapeInterval, shapeInterval, 1e-8);
    expectAllRelative(found.scaleInterval, scaleInterval, 1e-8);
    expectAllRelative([found.b10, found.median, found.mean], lives, 2e-9);
  });

  it('survival::lung', () => {
    // [R]
    const found = accepted(weibull(lung));
    expectRelative(found.shape, 1.316840172, 2e-9);
    expectRelative(found.scale, 417.7586654, 2e-9);
    expectRelative(found.logLikelihood, -1153.851188, 1e-9);
    expectAllRelative(found.shapeInterval, [1.160613417, 1.482799914], 1e-8);
    expectAllRelative(found.scaleInterval, [372.6784649, 470.7827244], 1e-8);
  });
});

describe('further published samples', () => {
  it('NIST/SEMATECH 8.2.1.5: survival does not reach one half', () => {
    // [M] data; [R]
    const times = [10, 32, 56, 98, 122, 181, -50, -100, -125, -150, ...new Array<number>(10).fill(-200)];
    expectSteps(times, [
      [10, 20, 1, 0.95, 0.04873397172, 0.69474319, 0.99280223, 0.05, 0.05],
      [32, 19, 1, 0.9, 0.06708203932, 0.65603071, 0.97401017, 0.1026315789, 0.07259533802],
      [56, 17, 1, 0.8470588235, 0.08138831992, 0.59679518, 0.94802464, 0.1614551084, 0.09343602472],
      [98, 16, 1, 0.7941176471, 0.09192127978, 0.53968048, 0.91744808, 0.2239551084, 0.112412369],
      [122, 14, 1, 0.737394958, 0.1013568034, 0.47824097, 0.88178491, 0.2953836798, 0.1331862663],
      [181, 11, 1, 0.6703590527, 0.1121406859, 0.40337659, 0.83846489, 0.3862927707, 0.1612545948],
    ]);
    const { median, medianInterval } = accepted(kaplanMeier(followed(...times)));
    expect(median).toBeNull();
    expect(medianInterval[1]).toBeNull();
  });

  it('Therneau and Grambsch’s test data 1, by Breslow exactly ln((3 + √33)/2)', () => {
    // [S] therneau/survival tests/book1.R, without the row whose status is missing; [R]
    const data = { time: [9, 1, 1, 6, 6, 8], event: [1, 1, 0, 1, 1, 0] };
    const x = [0, 1, 1, 1, 0, 0];
    const breslow = accepted(cox(data, x, 'breslow'));
    expectRelative(breslow.coefficient, Math.log((3 + Math.sqrt(33)) / 2), 1e-12);
    expectRelative(breslow.standardError, 1.255734393, 1e-9);
    expectRelative(breslow.score, 1.6, 1e-12);
    expectAllRelative(breslow.logLikelihood, [-4.564348191, -3.824749505], 1e-9);
    const efron = accepted(cox(data, x, 'efron'));
    expectRelative(efron.coefficient, 1.676857486, 1e-9);
    expectRelative(efron.standardError, 1.277615576, 1e-9);
    expectAllRelative(efron.hazardRatioInterval, [0.43726186, 65.427195], 5e-8);
    expectRelative(efron.score, 2.036144578, 1e-9);
  });

  it('survival::lung by sex', () => {
    // [M] published log-rank 10.3, coefficient −0.5310 (0.1672), median 310; [R]
    const test = accepted(logRank(lung, lung.sex));
    expectAllRelative(
      test.groups.map((group) => group.expected),
      [91.58173903, 73.41826097],
      1e-9,
    );
    expectRelative(test.chiSquare, 10.32674195, 1e-9);
    expectRelative(test.p, 0.00131116452, 1e-8);
    const efron = accepted(cox(lung, lung.sex, 'efron'));
    expectRelative(efron.coefficient, -0.53102354, 1e-8);
    expectRelative(efron.standardError, 0.1671785833, 1e-9);
    expectRelative(efron.z, -3.176384974, 1e-9);
    expectAllRelative(efron.logLikelihood, [-749.9098014, -744.592999], 1e-9);
    expectRelative(efron.score, 10.3251485, 1e-9);
    const breslow = accepted(cox(lung, lung.sex, 'breslow'));
    expectRelative(breslow.coefficient, -0.5303965769, 1e-9);
    expectAllRelative(breslow.logLikelihood, [-750.1220189, -744.8181827], 1e-9);
    const { steps, median } = accepted(kaplanMeier(lung));
    expect(median).toBe(310);
    const at = (time: number) => steps.findLast((step) => step.time <= time)!;
    expectRelative(at(180).survival, 0.7216706534, 1e-9);
    expectRelative(at(180).standardError, 0.02981241947, 1e-9);
    expectRelative(at(365).survival, 0.4092416245, 1e-9);
    expectRelative(at(365).cumulativeHazard, 0.8883245744, 1e-9);
  });
});

describe('association', () => {
  it('Fisher’s tea tasting', () => {
    // [M] published one-sided 0.2429, two-sided 0.4857, odds ratio 6.408; [R] solved to 1e-13.
    const found = accepted(
      fisher([
        [3, 1],
        [1, 3],
      ]),
    );
    expectAllRelative([found.pTwoSided, found.pGreater, found.pLess], [0.4857142857, 0.2428571429, 0.9857142857], 1e-9);
    expectRelative(found.oddsRatio, 6.408319658, 1e-9);
    expectAllRelative(found.interval, [0.2117355954, 626.2435306], 1e-9);
  });

  it('Fisher’s convictions of twins', () => {
    // [M] published two-sided 0.0005367, less 0.0004652, odds ratio 0.04694; [R]
    const found = accepted(
      fisher([
        [2, 15],
        [10, 3],
      ]),
    );
    expectAllRelative([found.pTwoSided, found.pLess], [0.0005367241191, 0.0004651809434], 1e-9);
    expectRelative(found.oddsRatio, 0.04693663905, 1e-9);
    expectAllRelative(found.interval, [0.003317163951, 0.3631896024], 1e-9);
  });

  it('Benjamini and Hochberg’s fifteen p values: 4 stand at 0.05, 9 at 0.10', () => {
    // [S] many public copies; adjusted values [R] p.adjust
    const p = [
      0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.324, 0.4262, 0.5719, 0.6528, 0.759, 1,
    ];
    const found = accepted(falseDiscovery(p, 0.05));
    expect(found.rejected).toBe(4);
    expect(accepted(falseDiscovery(p, 0.1)).rejected).toBe(9);
    expectAllRelative(
      found.adjusted,
      [
        0.0015, 0.003, 0.0095, 0.035625, 0.0603, 0.06385714286, 0.06385714286, 0.0645, 0.0765, 0.486, 0.5811818182,
        0.714875, 0.7532307692, 0.8132142857, 1,
      ],
      1e-9,
    );
  });
});

// [M] R. Newcombe, Statistics in Medicine 17, 1998, 857, table I, method 3: the score limits without correction.
it.each([
  [81, 263, 0.2553, 0.3662],
  [15, 148, 0.0624, 0.1605],
  [0, 20, 0, 0.1611],
  [1, 29, 0.0061, 0.1718],
  [29, 29, 0.883, 1],
])('%i of %i is between %d and %d', (count, of, lower, upper) => {
  const told = accepted(proportion(count, of));
  expect(told.share).toBe(count / of);
  expect([told.lower.toFixed(4), told.upper.toFixed(4)]).toEqual([lower.toFixed(4), upper.toFixed(4)]);
});
