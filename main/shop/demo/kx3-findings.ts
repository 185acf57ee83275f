// What teardown of the example unit found, invented and agreeing with what was read and is then changed on it.
import { checkNamed, type JobAtHand, packNamed } from './kx3-job.ts';

type Found = readonly [
  part: string,
  condition: string,
  decision: string,
  more?: { slot?: readonly [pack: string, kind: string, place: number]; left?: string; note?: string; check?: string },
];

const found: readonly Found[] = [
  [
    'steel 2',
    'heat-spotted',
    'replace',
    { slot: ['Forward', 'steel', 2], left: '76.5', note: 'a thicker one goes in' },
  ],
  ['friction 1', 'good', 'reuse', { slot: ['Forward', 'friction', 1], left: '79.5' }],
  ['friction 2', 'worn', 'reuse', { slot: ['Forward', 'friction', 2], left: '80.0', note: 'lining whole, no glaze' }],
  [
    'steel 2',
    'good',
    'replace',
    { slot: ['Direct', 'steel', 2], left: '91.0', note: 'a thin one opens the clearance' },
  ],
  ['friction 2', 'good', 'reuse', { slot: ['Direct', 'friction', 2], left: '84.5' }],
  [
    'snap ring',
    'good',
    'replace',
    { slot: ['Low/reverse', 'snap ring', 1], left: '74.0', note: 'selective: a thicker one' },
  ],
  [
    'converter hub bushing',
    'loose',
    'replace',
    { check: 'Converter hub to pump bushing', note: '5.0 thou, at most 4.5' },
  ],
  ['front thrust washer', 'worn', 'replace', { left: '66', note: 'end play 31' }],
  ['reverse drum', 'scored', 'not decided yet', { note: 'band side, two light rings' }],
];

/** Writes the findings down, part by part. */
export async function writeFindings({ call, jobId, sheet, by }: JobAtHand): Promise<void> {
  for (const [part, condition, decision, more = {}] of found) {
    const [packName, kind, place = 0] = more.slot ?? [];
    const pack = packName === undefined ? null : packNamed(sheet, packName);
    const slot = pack?.slots.filter((each) => each.kind === kind)[place - 1];
    const finding = {
      part,
      packId: pack?.packId ?? null,
      slotId: slot?.slotId ?? null,
      place: null,
      condition,
      thickness: more.left ?? '',
      checkId: more.check === undefined ? null : checkNamed(sheet, more.check).checkId,
      note: more.note ?? '',
    };
    await call('jobs.recordFinding', { jobId, finding, decision, by });
  }
}
