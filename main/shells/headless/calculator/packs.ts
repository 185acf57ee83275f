// The calculator's computations at the bench: clearance by air, feeler, the gap behind the mock-ups, end play.
import { z } from 'zod';
import { accept, refuse } from '../../../../app/base/result.ts';
import { endPlayOptions, spaceForWasher } from '../../../../app/packs/end-play.ts';
import {
  type GapKnowledge,
  gapEstimate,
  learnGap,
  pieceEstimate,
  predictClearance,
} from '../../../../app/packs/gap.ts';
import { clearanceByAir } from '../../../../app/readings/clearance-by-air.ts';
import { enoughPairs, feelerBias } from '../../../../app/readings/feeler-bias.ts';
import { feelerGap } from '../../../../app/readings/feeler-gap.ts';
import { enoughDegreesOfFreedom, repeatabilityOfRepeats, statedOrOwn } from '../../../../app/readings/repeatability.ts';
import { differenceAsTyped } from '../../../../app/statistics/as-typed.ts';
import { probabilityInside } from '../../../../app/statistics/conformity.ts';
import {
  computation,
  degreesOfFreedom,
  mapResult,
  notNegative,
  nullIfEndless,
  number,
  numbers,
  positive,
  probability,
} from './computation.ts';

const clearance = computation({
  name: 'clearance',
  purpose: 'a clutch pack’s clearance by air: push-down plus air travel, spot by spot, and how sure',
  input: z.strictObject({
    spots: z
      .array(
        z.strictObject({
          degrees: number('place from the mark on the drum').optional(),
          reads: z
            .array(
              z.strictObject({
                push: notNegative('push-down; without it the read is air only').optional(),
                air: notNegative('air travel'),
                zeroedAgain: z
                  .boolean()
                  .optional()
                  .describe('the dial was zeroed on the pressed plate, so the air travel already holds the push-down'),
              }),
            )
            .min(1)
            .describe('several reads at one spot are repeats'),
        }),
      )
      .min(1)
      .describe('one length unit throughout'),
    repeatability: z
      .strictObject({ standardDeviation: notNegative('of one read'), degreesOfFreedom })
      .optional()
      .describe('the shop’s pooled one; without it the repeats at the spots must show it'),
    handForce: notNegative(
      'half-width by which the hand may press more or less; left out, it is not in the budget',
    ).optional(),
    baseOnPump: notNegative('half-width, only where the dial’s base sits on the pump or a lower drum').optional(),
    dial: z.strictObject({
      resolution: notNegative('one step as read'),
      permittedError: notNegative('largest error of indication the dial may have').optional(),
    }),
    coverage: probability('0.95 if left out').optional(),
  }),
  outputs: {
    spots: 'degrees and the mean clearance of each spot',
    mean: 'of the spots',
    min: 'the tightest spot',
    max: 'the loosest spot',
    uneven: 'max − min: mostly the part, not the error of the mean',
    harmonic:
      'amplitude and loosestAtDegrees of c₀ + a cos θ + b sin θ, and probabilityByChance that repeat scatter alone shows as much; null with fewer than four places around the drum, or where more than half a turn lies between two neighbours',
    combined: 'combined standard uncertainty of the mean; null where the repeatability is unknown',
    effectiveDegreesOfFreedom: 'a real number; null means without limit, or unknown',
    coverageFactor: 'Student’s t',
    expanded: 'coverage factor times combined',
    budget: 'each line with name, standardUncertainty and its share of the variance',
    note: 'only where the uncertainty is unknown: why. A single read with no repeatability is no refusal: the plain number stands, with nulls for its uncertainty',
  },
  formula: [
    'clearance = push + air (air alone where zeroed again); mean of the spot means',
    'repeatability s · √(Σ 1/nⱼ) / spots, which is s / √reads with equally many reads at each',
    'hand force a/√3, base on the pump a/√3, dial permitted error a/√3',
    'dial resolution √2 · δ/√12: the clearance is a difference of two dial states',
    'combined in quadrature; ν by Welch and Satterthwaite; U = t(ν) · u',
  ].join('\n'),
  source: 'JCGM 100:2008 4.2.3, 4.3.7, F.2.2.1, G.4.1',
  compute: ({ spots, repeatability, handForce, baseOnPump, dial, coverage }) => {
    const read = clearanceByAir(
      spots.map((spot) => ({
        degrees: spot.degrees ?? null,
        reads: spot.reads.map((each) => ({
          push: each.push ?? null,
          air: each.air,
          isZeroedAgain: each.zeroedAgain ?? false,
        })),
      })),
      {
        repeatability: repeatability ?? null,
        handForceHalfWidth: handForce ?? 0,
        baseOnPumpHalfWidth: baseOnPump ?? 0,
        dialResolution: dial.resolution,
        dialPermittedError: dial.permittedError ?? 0,
        coverage: coverage ?? 0.95,
      },
    );
    return mapResult(read, ({ uncertainty, ...plain }) => ({
      ...plain,
      spots: plain.spots.map((spot) => ({ degrees: spot.degrees, clearance: spot.clearance })),
      combined: uncertainty.known ? uncertainty.combined : null,
      effectiveDegreesOfFreedom: uncertainty.known ? nullIfEndless(uncertainty.effectiveDegreesOfFreedom) : null,
      coverageFactor: uncertainty.known ? uncertainty.coverageFactor : null,
      expanded: uncertainty.known ? uncertainty.expanded : null,
      budget: uncertainty.known
        ? uncertainty.lines.map(({ name, standardUncertainty, share }) => ({ name, standardUncertainty, share }))
        : [],
      ...(uncertainty.known ? {} : { note: uncertainty.reason }),
    }));
  },
});

const feeler = computation({
  name: 'feeler',
  purpose: 'a gap between the leaf that goes and the leaf that stops',
  input: z.strictObject({
    goes: notNegative('the largest leaf that goes'),
    stops: positive('the smallest leaf that stops, in the same unit'),
    bias: z
      .strictObject({
        value: number('by how much the feeler reads above the method it is compared with'),
        standardUncertainty: notNegative('of that bias'),
      })
      .optional(),
  }),
  outputs: {
    value: 'the middle of the two, less the bias; refused where that is below zero',
    combined: 'combined standard uncertainty',
  },
  formula: 'value = (goes + stops) / 2 − bias; u² = ((stops − goes) / 2)² / 3 + u(bias)²',
  source: 'JCGM 100:2008 4.3.7, 3.2.4',
  compute: ({ goes, stops, bias }) => feelerGap(goes, stops, bias ?? null),
});

const learnedBias = computation({
  name: 'feeler-bias',
  purpose: 'by how much a feeler gauge reads above the air, from spots that were read both ways',
  input: z.strictObject({
    pairs: z
      .array(
        z.strictObject({
          feeler: notNegative('the gap by feeler gauge'),
          air: notNegative('the clearance by air at the same place, in the same unit'),
        }),
      )
      .describe('one pack and one person'),
  }),
  outputs: {
    n: 'pairs',
    applies: `whether there are enough pairs to correct a reading: never under ${enoughPairs} (common practice, no source)`,
    bias: 'mean of feeler − air; null under that number of pairs',
    standardUncertainty: 'of the bias, for the input of feeler; null likewise',
    standardDeviation: 'of one difference; null likewise',
  },
  formula: 'bias = Σ d / n, s = √(Σ (d − bias)² / (n − 1)), u = s / √n',
  source: 'JCGM 100:2008 4.2.1 to 4.2.3',
  compute: ({ pairs }) => {
    // As the decimals they were typed as: 0.8 − 0.7 is 0.1.
    const learned = feelerBias(pairs.map(({ feeler, air }) => differenceAsTyped(feeler, air)));
    return accept({
      n: learned.pairs,
      applies: learned.applies,
      bias: learned.applies ? learned.bias : null,
      standardUncertainty: learned.applies ? learned.standardUncertainty : null,
      standardDeviation: learned.applies ? learned.standardDeviation : null,
    });
  },
});

const pooledRepeatability = computation({
  name: 'pooled-repeatability',
  purpose: 'how well a shop repeats one read: a stated value at first, its own repeats once they carry enough',
  input: z.strictObject({
    repeats: z.array(numbers('')).describe('reads of one and the same thing in each list; any one unit'),
    stated: z
      .strictObject({ standardDeviation: notNegative('of one read'), degreesOfFreedom })
      .optional()
      .describe('the starting value; without it the repeats stand for themselves however few'),
    enoughDegreesOfFreedom: positive(
      `of the repeats, from which on they count and the stated value no longer; ${enoughDegreesOfFreedom} if left out (common practice, no source)`,
    ).optional(),
  }),
  outputs: {
    standardDeviation: 'of one read',
    degreesOfFreedom: 'that it rests on; null means without limit',
    from: '"stated" or "repeats"',
  },
  formula: 's = √(Σ Σ (x − x̄ of its list)² / Σ (n − 1)); differences between lists are the part’s',
  source: 'JCGM 100:2008 H.5.2.4, 4.2.4',
  compute: ({ repeats, stated, enoughDegreesOfFreedom: enough }) => {
    const own = repeatabilityOfRepeats(repeats);
    if (!stated && !own) {
      return refuse(
        'repeatability-unknown',
        'No list holds two reads and nothing is stated: how well it repeats is unknown.',
      );
    }
    const known = stated ? statedOrOwn(stated, own, enough) : { ...own!, from: 'repeats' };
    return accept({ ...known, degreesOfFreedom: nullIfEndless(known.degreesOfFreedom) });
  },
});

const gap = computation({
  name: 'gap',
  purpose: 'what the mock-ups say about the gap, and what another set of pieces would give',
  input: z.strictObject({
    gapPrior: z
      .strictObject({ mean: number('in any one length unit'), standardDeviation: notNegative('of it') })
      .optional()
      .describe('what was known of the gap before; left out, the first mock-up defines it'),
    pieces: z.array(
      z.strictObject({
        id: z.string(),
        height: number('as measured'),
        standardUncertainty: notNegative('its own; wide for frictions that a micrometer crushes'),
      }),
    ),
    sharedMicrometerUncertainty: notNegative('an error all heights share; 0 if left out').optional(),
    restack: notNegative('scatter of taking apart and putting back, one standard deviation; 0 if left out').optional(),
    mockUps: z.array(
      z.strictObject({
        pieces: z.array(z.string()).describe('ids of what sat in the pack'),
        clearance: number('as read'),
        standardUncertainty: positive('of the reading'),
      }),
    ),
    candidate: z.array(z.string()).optional().describe('ids of what shall sit in the pack'),
    band: z
      .strictObject({ lower: number('lower limit').optional(), upper: number('upper limit').optional() })
      .optional(),
  }),
  outputs: {
    gap: 'mean and standardDeviation after all mock-ups',
    pieces: 'the same for the true height of each piece',
    innovations:
      'for each mock-up in turn, the reading less what the earlier ones predicted, in standard deviations of that; null where nothing predicted it',
    prediction:
      'for the candidate: mean, standardDeviation of the true clearance once it is stacked anew (re-stack included, reading error not), probabilityInBand or null; null without a candidate',
  },
  formula: [
    'clearance k = gap − Σ heights + re-stack + reading error; heights normal about the measured ones,',
    'with a shared part; Gaussian conditioning one mock-up after the other by a square-root update',
  ].join('\n'),
  source: 'G. Bierman, Factorization Methods for Discrete Sequential Estimation, 1977, II.3 (Potter)',
  compute: ({ gapPrior, pieces, sharedMicrometerUncertainty, restack, mockUps, candidate, band }) => {
    if (band && band.lower === undefined && band.upper === undefined) {
      return refuse('no-limits', 'The band has neither a lower nor an upper limit.');
    }
    if (band?.lower !== undefined && band.upper !== undefined && band.lower >= band.upper) {
      return refuse('limits-upside-down', 'The lower limit is not below the upper limit.');
    }
    const learned = learnGap({
      gapPrior: gapPrior ?? null,
      pieces,
      sharedMicrometerUncertainty: sharedMicrometerUncertainty ?? 0,
      restack: restack ?? 0,
      mockUps,
    });
    if (!learned.ok) return learned;
    const prediction = candidate ? predict(learned.value, candidate, band) : accept(null);
    return mapResult(prediction, (predicted) => ({
      gap: gapEstimate(learned.value),
      pieces: pieces.map(({ id }) => {
        const height = pieceEstimate(learned.value, id);
        return { id, ...(height.ok ? height.value : {}) };
      }),
      innovations: learned.value.innovations,
      prediction: predicted,
    }));
  },
});

function predict(
  knowledge: GapKnowledge,
  candidate: readonly string[],
  band: { lower?: number | undefined; upper?: number | undefined } | undefined,
) {
  return mapResult(predictClearance(knowledge, candidate), ({ mean, standardDeviation }) => ({
    mean,
    standardDeviation,
    probabilityInBand: band
      ? probabilityInside(mean, standardDeviation, { lower: band.lower ?? null, upper: band.upper ?? null })
      : null,
  }));
}

const washers = {
  thicknesses: numbers('of the washers at hand'),
  target: notNegative('end play aimed at'),
  lower: notNegative('least end play').optional(),
  upper: notNegative('most end play').optional(),
};

const endPlay = computation({
  name: 'end-play',
  purpose: 'which selective washer brings an end play to its target',
  input: z.union([
    z.strictObject({
      washerIn: positive('thickness of the washer that is in; any one length unit'),
      endPlay: notNegative('end play read with it'),
      ...washers,
    }),
    z.strictObject({ gapWithoutShim: positive('end play with no washer at all; any one length unit'), ...washers }),
  ]),
  outputs: {
    options:
      'thickness, endPlay and absoluteDeviation from the target, best first and the thinner one on a tie; only those inside the limits',
  },
  formula: 'end play = washer in + end play read − washer: a thicker washer gives less',
  source: 'arithmetic',
  compute: (input) => {
    const space = 'washerIn' in input ? spaceForWasher(input.washerIn, input.endPlay) : input.gapWithoutShim;
    const limits = { lower: input.lower ?? null, upper: input.upper ?? null };
    return mapResult(endPlayOptions(space, input.thicknesses, input.target, limits), (options) => ({ options }));
  },
});

export const packComputations = [clearance, feeler, learnedBias, pooledRepeatability, gap, endPlay];
