// The demo's gauges, invented: one overdue for its check, one found out, and a small repeat test of one, its readings
// generated.
import type { Input } from '../../../app/contract/contract.ts';
import { dayAfter } from '../../../app/jobs/calendar-days.ts';
import type { Caller } from './kx3-job.ts';

type DemoGauge = Omit<Input<'gauges.saveGauge'>, 'gaugeId' | 'by'> & {
  /** How many days ago each check was, against what, and its points. */
  readonly checks: ReadonlyArray<{
    readonly ago: number;
    readonly against: Input<'gauges.recordCheck'>['against'];
    readonly points: ReadonlyArray<readonly [nominal: string, read: string]>;
  }>;
};

const demoGauges: readonly DemoGauge[] = [
  {
    kind: 'dial plunger',
    tag: 'Dial 1',
    unit: 'thou',
    resolution: '1',
    permittedError: '0.5',
    statedIn: 'maker’s sheet',
    offSquareDegrees: 3,
    serial: 'HL-D-0117',
    intervalDays: 90,
    checks: [
      {
        ago: 30,
        against: 'blocks',
        points: [
          ['50', '50'],
          ['100', '100.2'],
          ['200', '200.3'],
        ],
      },
    ],
  },
  {
    kind: 'dial lever',
    tag: 'Lever 2',
    unit: 'thou',
    resolution: '0.5',
    permittedError: '0.5',
    statedIn: 'certificate of the maker',
    offSquareDegrees: 12,
    serial: 'HL-L-0203',
    intervalDays: 90,
    checks: [
      {
        ago: 104,
        against: 'blocks',
        points: [
          ['10', '10'],
          ['30', '30.3'],
        ],
      },
    ],
  },
  {
    kind: 'micrometer',
    tag: 'Mike 0–1',
    unit: 'thou',
    resolution: '0.1',
    permittedError: '0.1',
    statedIn: 'certificate of the maker',
    offSquareDegrees: 0,
    serial: 'HL-M-0031',
    intervalDays: 180,
    checks: [
      {
        ago: 41,
        against: 'blocks',
        points: [
          ['50', '50'],
          ['100', '100'],
          ['500', '500.1'],
        ],
      },
    ],
  },
  {
    kind: 'feeler set',
    tag: 'Leaves A',
    unit: 'thou',
    resolution: '1',
    permittedError: '0.3',
    statedIn: 'stamped on the case',
    offSquareDegrees: 0,
    serial: '',
    intervalDays: 365,
    checks: [
      {
        ago: 41,
        against: 'another gauge',
        points: [
          ['10', '10'],
          ['20.1', '20'],
          ['30', '30'],
        ],
      },
    ],
  },
  {
    kind: 'pressure gauge',
    tag: 'Bench air',
    unit: 'psi',
    resolution: '1',
    permittedError: '2',
    statedIn: 'marked 2 % of 100 psi',
    offSquareDegrees: 0,
    serial: 'HL-P-0009',
    intervalDays: 365,
    checks: [
      {
        ago: 12,
        against: 'another gauge',
        points: [
          ['40', '43'],
          ['60', '64'],
        ],
      },
    ],
  },
];

/** Steels of the demo's repeat test as they are, in thou. */
const trueHeights: Record<string, number> = { R1: 76.9, R2: 77.4, R3: 78.1, R4: 78.6, R5: 79.3 };

/**
 * What an invented hand reads of a steel: generated, not measured. One presses the micrometer shut a little harder than
 * the other, and both waver by a few tenths.
 */
function generatedRead(part: string, initials: string, round: number): string {
  const waver = ((part.charCodeAt(1) * 7 + initials.charCodeAt(0) * 5 + round * 3) % 5) - 2;
  return ((trueHeights[part] ?? 78) - (initials === 'RA' ? 0.2 : 0) + 0.1 * waver).toFixed(1);
}

async function testTheMicrometer(call: Caller, gaugeId: number, people: readonly number[], by: number): Promise<void> {
  const { studyId } = await call('gauges.startStudy', {
    name: 'Mike on reaction steels',
    method: 'direct',
    gaugeId,
    parts: Object.keys(trueHeights),
    people: [...people],
    trials: 2,
    tolerance: '4',
    by,
  });
  for (;;) {
    const { next } = await call('gauges.getStudy', { studyId });
    if (next === null) return;
    const typed = generatedRead(next.part, next.initials, next.round);
    await call('gauges.recordStudyRead', { studyId, place: next.place, typed, by });
  }
}

/** `people` are whose hands the repeat test is of; `by` writes it down. */
export async function layOutGauges(call: Caller, people: readonly number[], by: number, now: string): Promise<void> {
  const today = now.slice(0, 10);
  for (const { checks, ...gauge } of demoGauges) {
    const { gaugeId } = await call('gauges.saveGauge', { ...gauge, gaugeId: null, by });
    for (const { ago, against, points } of checks) {
      await call('gauges.recordCheck', {
        gaugeId,
        against,
        checkedOn: dayAfter(today, -ago),
        points: points.map(([nominal, read]) => ({ nominal, read })),
        note: '',
        by,
      });
    }
    if (gauge.kind === 'micrometer') await testTheMicrometer(call, gaugeId, people, by);
  }
}
