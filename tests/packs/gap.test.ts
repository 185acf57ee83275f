// The gap model against hand arithmetic on the invented unit KX3, and against plain conditioning on full matrices.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  clearanceWithLoose,
  type GapEvidence,
  gapCovariance,
  gapEstimate,
  learnGap,
  pieceEstimate,
  predictClearance,
  spaceLeftBy,
} from '../../app/packs/gap.ts';
import { expectRelative } from '../statistics/relative.ts';
import { accepted, expectRefusal } from '../statistics/result.ts';

const steel = (id: string, height: number) => ({ id, height, standardUncertainty: 0.3 });

// Forward: 911 − 320 − 309 − 250 = 32; 76.5 out and 83.0 in is 25.5.
const forward: GapEvidence = {
  gapPrior: null,
  pieces: [
    { id: 'frictions', height: 320, standardUncertainty: 5 },
    steel('77.0', 77),
    steel('76.5', 76.5),
    steel('78.0', 78),
    steel('77.5', 77.5),
    steel('83.0', 83),
    { id: 'backing', height: 250, standardUncertainty: 0.5 },
  ],
  sharedMicrometerUncertainty: 0.2,
  restack: 1,
  mockUps: [
    {
      pieces: ['frictions', '77.0', '76.5', '78.0', '77.5', 'backing'],
      clearance: 32,
      standardUncertainty: 0.75,
    },
  ],
};
const swapped = ['frictions', '77.0', '83.0', '78.0', '77.5', 'backing'];

describe('one mock-up of the Forward pack', () => {
  const knowledge = accepted(learnGap(forward));

  it('puts the gap at 911 and the swapped pack at 25.5', () => {
    expect(gapEstimate(knowledge).mean).toBe(911);
    expect(accepted(predictClearance(knowledge, swapped)).mean).toBe(25.5);
    expect(knowledge.innovations).toEqual([null]);
  });

  it('leaves only the two steels, two stackings and one reading in doubt, however wide the frictions are', () => {
    // By hand: out 0.3² + in 0.3² + two re-stacks of 1² + reading 0.75²; the shared micrometer error cancels.
    const { standardDeviation } = accepted(predictClearance(knowledge, swapped));
    expectRelative(standardDeviation, Math.sqrt(0.09 + 0.09 + 1 + 1 + 0.5625), 1e-14);
    for (const wide of [1e3, 1e9, 1e15]) {
      const pieces = forward.pieces.map((piece) =>
        piece.id === 'frictions' ? { ...piece, standardUncertainty: wide } : piece,
      );
      const prediction = accepted(predictClearance(accepted(learnGap({ ...forward, pieces })), swapped));
      expectRelative(prediction.standardDeviation, Math.sqrt(0.09 + 0.09 + 1 + 1 + 0.5625), 1e-12);
    }
  });

  it('a second reading close to the prediction is no surprise, one far away is', () => {
    const again = (clearance: number) => {
      const second = { pieces: swapped, clearance, standardUncertainty: 0.75 };
      return accepted(learnGap({ ...forward, mockUps: [...forward.mockUps, second] })).innovations[1];
    };
    // By hand: predicted 25.5; in its doubt √2.7425 and the second reading’s own 0.75.
    expectRelative(again(26), 0.5 / Math.sqrt(2.7425 + 0.5625), 1e-12);
    expect(Math.abs(again(33) ?? 0)).toBeGreaterThan(3);
  });

  it('filling the space from a bin agrees with predicting the whole pack', () => {
    const second = { pieces: swapped, clearance: 26.4, standardUncertainty: 0.75 };
    const pieces = [...forward.pieces, steel('79.5', 79.5), steel('80.5', 80.5)];
    const learned = accepted(learnGap({ ...forward, pieces, mockUps: [...forward.mockUps, second] }));
    const space = accepted(spaceLeftBy(learned, ['frictions', '77.0', '78.0', 'backing']));
    const filled = clearanceWithLoose(space, { count: 2, heights: 160, variances: 0.18 });
    const whole = accepted(predictClearance(learned, ['frictions', '77.0', '78.0', 'backing', '79.5', '80.5']));
    expectRelative(filled.mean, whole.mean, 1e-12);
    expectRelative(filled.standardDeviation, whole.standardDeviation, 1e-12);
  });
});

/** Conditioning on all mock-ups at once, by solving with the full covariance: slow and plain. */
function byFullMatrices(evidence: GapEvidence, gapPrior: { mean: number; standardDeviation: number }) {
  const { pieces, mockUps } = evidence;
  const size = pieces.length + 1;
  const shared = evidence.sharedMicrometerUncertainty ** 2;
  const prior = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (_, j) => {
      if (i === 0 || j === 0) return i === j ? gapPrior.standardDeviation ** 2 : 0;
      return shared + (i === j ? pieces[i - 1]!.standardUncertainty ** 2 : 0);
    }),
  );
  const mean = [gapPrior.mean, ...pieces.map((piece) => piece.height)];
  const design = mockUps.map((mockUp) => [1, ...pieces.map((piece) => (mockUp.pieces.includes(piece.id) ? -1 : 0))]);
  const crossed = design.map((row) =>
    prior.map((column) => column.reduce((sum, value, j) => sum + value * row[j]!, 0)),
  );
  const system = design.map((row, i) =>
    design.map((_, j) => {
      const noise = i === j ? evidence.restack ** 2 + mockUps[i]!.standardUncertainty ** 2 : 0;
      return noise + row.reduce((sum, value, k) => sum + value * crossed[j]![k]!, 0);
    }),
  );
  const residual = mockUps.map(
    (mockUp, i) => mockUp.clearance - design[i]!.reduce((sum, value, k) => sum + value * mean[k]!, 0),
  );
  const solvedResidual = solve(system, residual);
  return {
    means: mean.map((value, k) => value + crossed.reduce((sum, row, i) => sum + row[k]! * solvedResidual[i]!, 0)),
    covariance: prior.map((row, k) => {
      const solved = solve(
        system,
        crossed.map((each) => each[k]!),
      );
      return row.map((value, l) => value - crossed.reduce((sum, each, i) => sum + each[l]! * solved[i]!, 0));
    }),
  };
}

function solve(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rows = matrix.map((row, i) => [...row, right[i]!]);
  rows.forEach((pivot, i) => {
    rows.forEach((row, j) => {
      if (i === j) return;
      const factor = row[i]! / pivot[i]!;
      row.forEach((_, k) => {
        row[k]! -= factor * pivot[k]!;
      });
    });
  });
  return rows.map((row, i) => row.at(-1)! / row[i]!);
}

const ids = ['a', 'b', 'c', 'd', 'e', 'f'];
const uncertainty = fc.double({ min: 0.1, max: 3, noNaN: true });
const evidence: fc.Arbitrary<GapEvidence> = fc.record({
  gapPrior: fc.constant(null),
  pieces: fc.tuple(
    ...ids.map((id) =>
      fc.record({
        id: fc.constant(id),
        height: fc.double({ min: 60, max: 100, noNaN: true }),
        standardUncertainty: uncertainty,
      }),
    ),
  ),
  sharedMicrometerUncertainty: fc.double({ min: 0, max: 1, noNaN: true }),
  restack: fc.double({ min: 0, max: 2, noNaN: true }),
  mockUps: fc.array(
    fc.record({
      pieces: fc.shuffledSubarray(ids),
      clearance: fc.double({ min: 10, max: 80, noNaN: true }),
      standardUncertainty: uncertainty,
    }),
    { minLength: 1, maxLength: 5 },
  ),
});
const gapPrior = fc.record({
  mean: fc.double({ min: 200, max: 400, noNaN: true }),
  standardDeviation: fc.double({ min: 0.1, max: 50, noNaN: true }),
});

describe('whatever was mocked up', () => {
  it('agrees with conditioning on full matrices', () => {
    fc.assert(
      fc.property(evidence, gapPrior, (given, prior) => {
        const learned = accepted(learnGap({ ...given, gapPrior: prior }));
        const plain = byFullMatrices(given, prior);
        const covariance = accepted(gapCovariance(learned, ids));
        expect(gapEstimate(learned).mean).toBeCloseTo(plain.means[0]!, 7);
        ids.forEach((id, i) => {
          expect(accepted(pieceEstimate(learned, id)).mean).toBeCloseTo(plain.means[i + 1]!, 7);
        });
        covariance.forEach((row, i) => {
          row.forEach((value, j) => {
            expect(value).toBeCloseTo(plain.covariance[i]![j]!, 6);
          });
        });
      }),
    );
  });

  it('knowing nothing of the gap is the limit of an ever wider prior', () => {
    fc.assert(
      fc.property(evidence, (given) => {
        const without = accepted(learnGap(given));
        const wide = accepted(learnGap({ ...given, gapPrior: { mean: 300, standardDeviation: 1e7 } }));
        const candidate = ['a', 'c', 'e'];
        const [narrowest, widest] = [without, wide].map((each) => accepted(predictClearance(each, candidate)));
        expect(widest!.mean).toBeCloseTo(narrowest!.mean, 4);
        expectRelative(widest!.standardDeviation, narrowest!.standardDeviation, 1e-6);
      }),
    );
  });

  it('one more mock-up never leaves more in doubt', () => {
    fc.assert(
      fc.property(evidence, fc.shuffledSubarray(ids), (given, candidate) => {
        const fewer = accepted(learnGap(given));
        const more = accepted(learnGap({ ...given, mockUps: [...given.mockUps, given.mockUps[0]!] }));
        const doubt = (knowledge: typeof fewer) => accepted(predictClearance(knowledge, candidate)).standardDeviation;
        expect(doubt(more)).toBeLessThanOrEqual(doubt(fewer) * (1 + 1e-12));
        expect(gapEstimate(more).standardDeviation).toBeLessThanOrEqual(
          gapEstimate(fewer).standardDeviation * (1 + 1e-12),
        );
      }),
    );
  });

  it('the order of the mock-ups does not matter, nor does the unit', () => {
    fc.assert(
      fc.property(evidence, (given) => {
        const forwards = accepted(learnGap(given));
        const backwards = accepted(learnGap({ ...given, mockUps: given.mockUps.toReversed() }));
        expectRelative(gapEstimate(backwards).mean, gapEstimate(forwards).mean, 1e-10);
        expectRelative(gapEstimate(backwards).standardDeviation, gapEstimate(forwards).standardDeviation, 1e-8);
        const nanometres = 25_400;
        const scaled = accepted(
          learnGap({
            gapPrior: null,
            pieces: given.pieces.map((piece) => ({
              ...piece,
              height: piece.height * nanometres,
              standardUncertainty: piece.standardUncertainty * nanometres,
            })),
            sharedMicrometerUncertainty: given.sharedMicrometerUncertainty * nanometres,
            restack: given.restack * nanometres,
            mockUps: given.mockUps.map((mockUp) => ({
              ...mockUp,
              clearance: mockUp.clearance * nanometres,
              standardUncertainty: mockUp.standardUncertainty * nanometres,
            })),
          }),
        );
        expectRelative(gapEstimate(scaled).mean, gapEstimate(forwards).mean * nanometres, 1e-11);
      }),
    );
  });
});

describe('what the gap model refuses', () => {
  it('an unknown piece, a piece twice, a reading without uncertainty, knowing nothing at all', () => {
    const [mockUp] = forward.mockUps;
    expectRefusal(learnGap({ ...forward, mockUps: [{ ...mockUp!, pieces: ['nobody'] }] }), 'unknown-piece');
    expectRefusal(learnGap({ ...forward, mockUps: [{ ...mockUp!, pieces: ['77.0', '77.0'] }] }), 'piece-twice');
    expectRefusal(learnGap({ ...forward, pieces: [steel('x', 1), steel('x', 2)] }), 'piece-twice');
    expectRefusal(learnGap({ ...forward, mockUps: [{ ...mockUp!, standardUncertainty: 0 }] }), 'no-uncertainty');
    expectRefusal(learnGap({ ...forward, restack: -1 }), 'negative');
    expectRefusal(learnGap({ ...forward, mockUps: [] }), 'nothing-known');
    expectRefusal(predictClearance(accepted(learnGap(forward)), ['nobody']), 'unknown-piece');
  });
});
