// The lists of KX3, an invented unit family, and how its first job answers them.
import type { Answer } from '../../../app/jobs/lists.contract.ts';
import type { ListTime, SpecList } from '../../../app/specs/spec-list.ts';
import { changed, choice, count, say, tick } from '../../../app/specs/trade-lists.ts';
import type { JobAtHand } from './kx3-job.ts';

const about = { packName: null, sourceNote: 'invented sheet KX3, page 6' };
const ofPack = (packName: string, frictions: number, steels: number, more: SpecList['lines'] = []): SpecList => ({
  ...about,
  name: `${packName} before the snap ring`,
  when: 'build',
  packName,
  lines: [
    count('Frictions', frictions),
    count('Steels', steels),
    ...more,
    tick('Backing plate at the ring end'),
    tick('Ring seated all round'),
  ],
});

/** One by one: which seat of the valve body holds a ball is seen on its picture. */
export const balls = ['Ball 1', 'Ball 2', 'Ball 3', 'Ball 4', 'Ball 5'];

export const kx3Lists: SpecList[] = [
  {
    ...about,
    name: 'Teardown',
    when: 'teardown',
    lines: [
      say('What lay in the pan and on the magnet'),
      choice('Pump faces', ['smooth'], ['scored']),
      choice('Sealing-ring lands', ['smooth'], ['scored', 'cracked']),
      tick('Case looked over for cracks'),
    ],
  },
  ofPack('Forward', 4, 4),
  ofPack('Direct', 4, 4, [tick('Thinnest steel in slot 2 or 3')]),
  ofPack('Low/reverse', 5, 5, [count('Wave plates', 1)]),
  {
    ...about,
    name: 'Valve body',
    when: 'build',
    lines: [
      say('Separator plate'),
      count('Check balls', 5),
      ...balls.map(tick),
      changed('Direct feed hole, in'),
      changed('Pressure valve spring'),
      choice('Third-gear feed', ['as made', 'opened'], ['blocked']),
    ],
  },
  { ...about, name: 'Converter', when: 'build', lines: [choice('Source', ['new', 'rebuilt'], ['as it came out'])] },
  {
    ...about,
    name: 'Cooler',
    when: 'final',
    lines: [choice('Cooler and lines', ['flushed', 'replaced'], ['left as they were'])],
  },
  {
    ...about,
    name: 'Final',
    when: 'final',
    lines: [
      say('Fluid'),
      say('Fluid put in'),
      { words: 'Stall, D', asks: { kind: 'stall', lowRpm: 2100, highRpm: 2400, longestSeconds: 5 } },
      choice('Shift 1–2', ['right'], ['soft', 'late', 'flares']),
      choice('Shift 2–3', ['right'], ['soft', 'late', 'flares']),
      choice('Leaks when hot', ['none'], ['seeps', 'drips']),
      tick('Driven warm and cold through every gear'),
    ],
  },
];

type Answered = readonly [list: string, words: string, answer: Answer, reason?: string];

const done: Answer = { kind: 'done' };
const counted = (count: number): Answer => ({ kind: 'counted', count });
const chosen = (option: string): Answer => ({ kind: 'chosen', option });
const written = (words: string): Answer => ({ kind: 'written', words });
const ringAndPlate = (list: string): Answered[] => [
  [list, 'Backing plate at the ring end', done],
  [list, 'Ring seated all round', done],
];

const answers: Readonly<Partial<Record<ListTime, readonly Answered[]>>> = {
  teardown: [
    ['Teardown', 'What lay in the pan and on the magnet', written('dark fines, one curl of brass')],
    ['Teardown', 'Pump faces', chosen('smooth')],
    ['Teardown', 'Sealing-ring lands', chosen('smooth')],
    ['Teardown', 'Case looked over for cracks', done],
  ],
  build: [
    ['Forward before the snap ring', 'Frictions', counted(4)],
    ['Forward before the snap ring', 'Steels', counted(4)],
    ...ringAndPlate('Forward before the snap ring'),
    ['Direct before the snap ring', 'Frictions', counted(4)],
    ['Direct before the snap ring', 'Steels', counted(4)],
    ['Direct before the snap ring', 'Thinnest steel in slot 2 or 3', done],
    ...ringAndPlate('Direct before the snap ring'),
    ['Low/reverse before the snap ring', 'Frictions', counted(5)],
    ['Low/reverse before the snap ring', 'Steels', counted(5)],
    ['Low/reverse before the snap ring', 'Wave plates', counted(1)],
    ...ringAndPlate('Low/reverse before the snap ring'),
    ['Valve body', 'Separator plate', written('SP-3, new')],
    ['Valve body', 'Check balls', counted(5)],
    ...balls.map((ball): Answered => ['Valve body', ball, done]),
    ['Valve body', 'Direct feed hole, in', { kind: 'changed', from: '.062', to: '.086' }],
    ['Valve body', 'Pressure valve spring', { kind: 'does not apply' }],
    ['Valve body', 'Third-gear feed', chosen('opened')],
    ['Converter', 'Source', chosen('rebuilt')],
  ],
  final: [
    ['Cooler', 'Cooler and lines', chosen('flushed')],
    ['Final', 'Fluid', written('type 3')],
    ['Final', 'Fluid put in', written('11 qt')],
    ['Final', 'Stall, D', { kind: 'stalled', rpm: 2250, seconds: 4 }],
    ['Final', 'Shift 1–2', chosen('right')],
    ['Final', 'Shift 2–3', chosen('right')],
    ['Final', 'Leaks when hot', chosen('none')],
    ['Final', 'Driven warm and cold through every gear', done],
  ],
};

/** Answers the lists of one time as the bench does, line by line. */
export async function answerLists({ call, jobId, sheet, by }: JobAtHand, when: ListTime): Promise<void> {
  for (const [list, words, answer, reason = ''] of answers[when] ?? []) {
    const line = sheet.lists.find(({ name }) => name === list)?.lines.find((each) => each.words === words);
    if (!line) throw new Error(`${list} has no line ${words}`);
    await call('jobs.answerLine', { jobId, lineId: line.lineId, answer, reason, by });
  }
}
