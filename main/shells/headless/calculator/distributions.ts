// The calculator's computations of distributions: the tails behind every p value and every limit.
import { z } from 'zod';
import { accept } from '../../../../app/base/result.ts';
import { chiSquareTails } from '../../../../app/statistics/chi-square.ts';
import { fTails } from '../../../../app/statistics/f-distribution.ts';
import { normalQuantile, normalTails } from '../../../../app/statistics/normal.ts';
import { computation, notNegative, numbers, probability } from './computation.ts';

const degrees = (what: string) => z.number().min(0.01).max(1e9).describe(`${what}, real, 0.01 to 1e9`);

const normal = computation({
  name: 'normal',
  purpose: 'the tails of the normal distribution, or where a tail has a given size',
  input: z.union([
    z.strictObject({ z: numbers('standard deviations above the mean') }),
    z.strictObject({ probability: z.array(probability('')).describe('that lies below the point wanted') }),
  ]),
  outputs: {
    lower: 'for each z: the probability below it',
    upper: 'for each z: the probability above it',
    quantiles: 'for each probability: the z below which it lies',
  },
  formula: 'Φ(z) = ½ erfc(−z/√2), erfc(z) = Q(½, z²); relative error below 1e-12 in either tail, down to 1e-300',
  source: 'DLMF 7.11.2, 8.11.4, 8.9.2',
  compute: (input) => {
    if ('probability' in input) return accept({ quantiles: input.probability.map(normalQuantile) });
    const tails = input.z.map(normalTails);
    return accept({ lower: tails.map(({ lower }) => lower), upper: tails.map(({ upper }) => upper) });
  },
});

const tails = {
  lower: 'the probability at or below it',
  upper: 'the probability above it',
};

const f = computation({
  name: 'f-distribution',
  purpose: 'the tails of a ratio of two mean squares',
  input: z.strictObject({
    f: notNegative('the ratio'),
    degreesOfFreedom1: degrees('of the mean square above'),
    degreesOfFreedom2: degrees('of the mean square below'),
  }),
  outputs: tails,
  formula: 'I_x(ν₁/2, ν₂/2), x = ν₁f / (ν₁f + ν₂); relative error below 1e-12 in either tail, down to 1e-300',
  source: 'DLMF 8.17.22; ACM TOMS algorithm 708',
  compute: (input) => accept(fTails(input.f, input.degreesOfFreedom1, input.degreesOfFreedom2)),
});

const chiSquare = computation({
  name: 'chi-square',
  purpose: 'the tails of a sum of squared standard normal values',
  input: z.strictObject({
    chiSquare: notNegative('the sum'),
    degreesOfFreedom: degrees('how many are free'),
  }),
  outputs: tails,
  formula: 'P(ν/2, χ²/2); relative error below 1e-12 in either tail, down to 1e-300',
  source: 'DLMF 8.2.4, 8.11.4, 8.9.2',
  compute: (input) => accept(chiSquareTails(input.chiSquare, input.degreesOfFreedom)),
});

export const distributionComputations = [normal, f, chiSquare];
