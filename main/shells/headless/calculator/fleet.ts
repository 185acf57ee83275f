// The calculator's computations about what came back: survival, factors, and how many of them stand up.
import { z } from 'zod';
import { cox } from '../../../../app/statistics/cox.ts';
import { falseDiscovery } from '../../../../app/statistics/false-discovery.ts';
import { fisher } from '../../../../app/statistics/fisher.ts';
import { kaplanMeier } from '../../../../app/statistics/kaplan-meier.ts';
import { logRank } from '../../../../app/statistics/log-rank.ts';
import { proportion } from '../../../../app/statistics/proportion.ts';
import { weibull } from '../../../../app/statistics/weibull.ts';
import { computation, mapResult, name, numbers, probability } from './computation.ts';

const followUp = {
  time: z.array(z.number().nonnegative()).describe('how long each was followed, in any one unit'),
  event: z.array(z.literal([0, 1])).describe('1 where the event ended that, 0 where something else did'),
};

const survival = computation({
  name: 'kaplan-meier',
  purpose: 'the part that has not come back by a given time',
  input: z.strictObject(followUp),
  outputs: {
    steps:
      'for each time with an event: time, atRisk, events, survival, standardError, lower, upper (95 %; null with the standard error where nobody is left), cumulativeHazard and its standard error',
    median:
      'first time at which survival is one half or less; where it runs level at one half until an event takes it lower, the middle of that stretch; null: not reached',
    medianInterval: 'where the limits reach one half; null: not reached',
    interval: '"log-log"',
  },
  formula: [
    'S = Π (1 − d/n); Greenwood S²Σ d/(n(n − d)); limits S^exp(± 1.959964 √Σ / log S);',
    'cumulative hazard Σ d/n with variance Σ d/n²',
  ].join('\n'),
  source: 'E. Kaplan and P. Meier, JASA 53, 1958, 457; O. Aalen, Annals of Statistics 6, 1978, 701',
  compute: (input) => mapResult(kaplanMeier(input), (found) => ({ ...found, interval: 'log-log' })),
});

const groups = computation({
  name: 'log-rank',
  purpose: 'whether groups come back at different rates',
  input: z.strictObject({ ...followUp, group: z.array(name).describe('the group of each') }),
  outputs: {
    groups: 'name, n, observed and expected events of each, in the order they first appear',
    chiSquare: 'of observed against expected',
    degreesOfFreedom: 'groups − 1, less where groups were never at risk together',
    p: 'how often chance alone gives at least this',
  },
  formula: '(O − E)ᵀ V⁻ (O − E) with hypergeometric variance at every event time',
  source: 'N. Mantel, Cancer Chemotherapy Reports 50, 1966, 163',
  compute: ({ group, ...times }) => logRank(times, group),
});

const lifetime = computation({
  name: 'weibull',
  purpose: 'a lifetime with a shape, fitted to times that may have ended early',
  input: z.strictObject({
    ...followUp,
    time: z.array(z.number().positive()).describe('more than zero, in any one unit'),
  }),
  outputs: {
    shape: 'below 1 early failures, 1 chance, above 1 wear',
    scale: 'time by which 63.2 % have failed',
    logLikelihood: 'at the best fit',
    shapeInterval: '95 % by the profile likelihood; null: not reached',
    scaleInterval: '95 % by the profile likelihood; null: not reached',
    b10: 'time by which 10 % have failed',
    median: 'time by which half have failed',
    mean: 'scale · Γ(1 + 1/shape)',
  },
  formula: 'maximum of Σ events log f + Σ ended log S; limits where the profile falls by χ²(0.95, 1)/2 = 1.9207',
  source: 'W. Meeker and L. Escobar, Statistical Methods for Reliability Data, 1998, 8',
  compute: weibull,
});

const hazard = computation({
  name: 'cox',
  purpose: 'how many times as likely something is to come back for one step more of a factor',
  input: z.strictObject({
    ...followUp,
    x: numbers('the factor of each'),
    ties: z.enum(['efron', 'breslow']).optional().describe('"efron" if left out'),
  }),
  outputs: {
    coefficient: 'log of the hazard ratio per unit of x',
    standardError: 'of the coefficient',
    hazardRatio:
      'e to the coefficient, per unit of x; null: not reached, because it is too large or too small to write (take x in a larger unit)',
    hazardRatioInterval: '95 % by Wald; null: not reached, for the same reason',
    z: 'coefficient over its standard error',
    p: 'two-sided',
    logLikelihood: 'without the factor, and fitted',
    likelihoodRatio: 'twice their difference',
    score: 'score test',
  },
  formula: 'partial likelihood; Newton’s method; ratio e^b, limits e^(b ± 1.959964 SE)',
  source: 'D. Cox, JRSS B 34, 1972, 187; B. Efron, JASA 72, 1977, 557; N. Breslow, Biometrics 30, 1974, 89',
  compute: ({ x, ties, ...times }) => cox(times, x, ties ?? 'efron'),
});

const count = z.int().nonnegative();

const exact = computation({
  name: 'fisher',
  purpose: 'whether one of two groups comes back more often, exactly',
  input: z.strictObject({
    table: z
      .tuple([z.tuple([count, count]), z.tuple([count, count])])
      .describe('[[a, b], [c, d]], counts, a million together at most'),
  }),
  outputs: {
    pTwoSided: 'tables as likely as this or less (within 1e-7); 0 where it is below 1e-307',
    pLess: 'for an odds ratio below 1; 0 likewise',
    pGreater: 'for an odds ratio above 1; 0 likewise',
    oddsRatio: 'conditional maximum likelihood, not ad/bc; null: without limit',
    interval: 'exact 95 %, 2.5 % on either side; null: without limit',
  },
  formula: 'hypergeometric given the margins; limits where its tail at that odds ratio is 0.025',
  source: 'R. Fisher, The Design of Experiments, 1935; A. Agresti, Categorical Data Analysis, 2nd edition, 3.5',
  compute: ({ table }) => fisher(table),
});

const discovery = computation({
  name: 'false-discovery',
  purpose: 'which of many factors tried stand up',
  input: z.strictObject({
    p: z.array(z.number().min(0).max(1)).min(1).describe('one p value for every factor tried'),
    q: probability('the part of the finds that may be false'),
  }),
  outputs: { adjusted: 'p values, in the order given', rejected: 'how many stand up at q' },
  formula: 'adjusted p(i) = min over j ≥ i of m p(j) / j',
  source: 'Y. Benjamini and Y. Hochberg, JRSS B 57, 1995, 289',
  compute: ({ p, q }) => falseDiscovery(p, q),
});

const share = computation({
  name: 'proportion',
  purpose: 'how sure a counted share is: so many of so many',
  input: z.strictObject({ count: count.describe('how many are so'), of: count.describe('how many there are') }),
  outputs: { share: 'count over of', lower: '95 % limit', upper: '95 % limit' },
  formula: '(x + z²/2 ± z √(x(n − x)/n + z²/4)) / (n + z²) with z = 1.959964',
  source: 'E. Wilson, JASA 22, 1927, 209; R. Newcombe, Statistics in Medicine 17, 1998, 857',
  compute: (input) => proportion(input.count, input.of),
});

export const fleetComputations = [survival, groups, lifetime, hazard, exact, discovery, share];
