// The same pack by feeler and by air, with the as-found readings of the example unit.
import { describe, expect, test } from 'vitest';
import { feelerBesideAir } from '../../app/readings/feeler-beside-air.ts';
import type { Take } from '../../app/readings/readings.contract.ts';

const thou = 25_400;

type State = { readonly mockUp?: number | null; readonly bias?: number; readonly leaks?: boolean };

function take(method: Take['method'], read: number | null, { mockUp, bias, leaks = false }: State = {}) {
  return {
    phase: mockUp === undefined ? ('as found' as const) : ('mock-up' as const),
    mockUpNumber: mockUp ?? null,
    method,
    notes: leaks ? [{ what: 'will not hold air' as const }] : [],
    evaluation: {
      mean: read === null ? null : (read - (bias ?? 0)) * thou,
      feelerBias:
        method !== 'feeler' || read === null
          ? null
          : {
              pairs: bias === undefined ? 3 : 9,
              bias: bias === undefined ? null : bias * thou,
              meanAsRead: read * thou,
            },
    },
  };
}

describe('a feeler beside air', () => {
  test.each([
    // 41 goes and 42 stops against 38.0; 30 goes and 31 stops against 32.0.
    ['Direct', 41.5, 38, 3.5],
    ['Forward', 30.5, 32, -1.5],
  ])('%s as found: %d by feeler, %d by air', (_, byFeeler, byAir, apart) => {
    const [feeler, air] = [take('feeler', byFeeler), take('air', byAir)];
    expect(feelerBesideAir(feeler, [air, feeler])).toEqual({ feeler, air, feelerAboveAir: apart * thou });
    expect(feelerBesideAir(air, [feeler, air])).toEqual({ feeler, air, feelerAboveAir: apart * thou });
  });

  test('is what the feeler read, also where its bias was taken off', () => {
    const [feeler, air] = [take('feeler', 41.5, { bias: 3 }), take('air', 38)];
    expect(feelerBesideAir(feeler, [air, feeler])?.feelerAboveAir).toBe(3.5 * thou);
  });

  test('keeps to what sits in the pack: another mock-up is another pack, the newest of its own counts', () => {
    const feeler = take('feeler', 28, { mockUp: 1 });
    const takes = [
      take('air', 32),
      take('air', 26, { mockUp: 1 }),
      take('air', 27, { mockUp: 1 }),
      take('air', 25, { mockUp: 2 }),
    ];
    expect(feelerBesideAir(feeler, [...takes, feeler])?.air).toBe(takes[2]);
    expect(feelerBesideAir(feeler, [takes[0]!, takes[3]!, feeler])).toBeNull();
  });

  test('has nothing to say of air only, of a leak, of a state nobody wrote down, or of an end play', () => {
    const feeler = take('feeler', 30.5);
    expect(feelerBesideAir(feeler, [take('air', null), feeler])).toBeNull();
    expect(feelerBesideAir(feeler, [take('air', 32, { leaks: true }), feeler])).toBeNull();
    const unknown = take('feeler', 30.5, { mockUp: null });
    expect(feelerBesideAir(unknown, [take('air', 32, { mockUp: null }), unknown])).toBeNull();
    expect(feelerBesideAir(take('dial', 19), [take('air', 32)])).toBeNull();
  });
});
