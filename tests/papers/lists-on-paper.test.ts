// The lists on paper: the shop reads every line and why one stands, the customer what was put in, changed and tried.
import { expect, test } from 'vitest';
import { isSettled, standingOfLine } from '../../app/jobs/list-answers.ts';
import type { Answer, LineOfJob, ListOfJob } from '../../app/jobs/lists.contract.ts';
import { answeredLists } from '../../app/papers/lists-on-paper.ts';
import type { Block } from '../../app/papers/paper.ts';
import type { Asks, ListTime } from '../../app/specs/spec-list.ts';

type Answered = readonly [words: string, asks: Asks, answer: Answer | null, reason?: string];

function list(listId: number, name: string, when: ListTime, answered: readonly Answered[]): ListOfJob {
  const lines = answered.map(([words, asks, answer, reason = ''], index): LineOfJob => {
    const standing = standingOfLine(asks, answer);
    const given = answer && { answer, reason, at: '2026-11-24T15:00:00.000Z', by: 'RA' };
    return {
      ...{ words, asks, given, standing },
      lineId: 100 * listId + index,
      earlier: 0,
      isSettled: isSettled(standing, reason),
    };
  });
  return { ...{ listId, name, when, lines }, packName: null, packId: null, sourceNote: '' };
}

const tick: Asks = { kind: 'tick' };
const faces: Asks = {
  kind: 'choice',
  options: [
    { words: 'smooth', isGood: true },
    { words: 'scored', isGood: false },
  ],
};
const stall: Asks = { kind: 'stall', lowRpm: 2100, highRpm: 2400, longestSeconds: 5 };
const lists = [
  list(1, 'Teardown', 'teardown', [['Pump faces', faces, { kind: 'chosen', option: 'scored' }, 'polished out']]),
  list(2, 'Valve body', 'build', [
    ['Separator plate', { kind: 'words' }, { kind: 'written', words: 'SP-3, new' }],
    ['Check balls', { kind: 'count', expected: 5 }, { kind: 'counted', count: 4 }, 'one left out on purpose'],
    ['Ball 1', tick, { kind: 'done' }],
    ['Feed hole', { kind: 'change' }, { kind: 'changed', from: '.062', to: '.086' }],
    ['Spring', { kind: 'change' }, { kind: 'does not apply' }],
  ]),
  list(3, 'Final', 'final', [
    ['Stall, D', stall, { kind: 'stalled', rpm: 2000, seconds: 7 }],
    ['Driven warm and cold', tick, { kind: 'done' }],
    ['Fluid', { kind: 'words' }, null],
  ]),
];

/** The words of a block's rows, a line each. */
function said(blocks: readonly Block[]): string[] {
  return blocks.flatMap((block) => {
    if (block.kind !== 'table') return [];
    return block.rows.map((row) => {
      if (row.kind === 'group') return row.text;
      const cells = row.cells.map((cell) => (cell.kind === 'words' ? cell.words.map(({ text }) => text).join('') : ''));
      return cells.join(' | ');
    });
  });
}

test('the shop’s copy has every line with its answer, and why one that is off stands', () => {
  expect(said(answeredLists({ copy: 'shop', lists }))).toEqual([
    'Teardown',
    'Pump faces | off: scored, stands because: polished out | RA',
    'Valve body, build',
    'Separator plate | SP-3, new | RA',
    'Check balls | off: 4 in, 5 asked for, stands because: one left out on purpose | RA',
    'Ball 1 | done | RA',
    'Feed hole | .062 → .086 | RA',
    'Spring | does not apply | RA',
    'Final',
    'Stall, D | off: 2000 rpm for 7 s: low by 100 rpm; over the cap of 5 s, no reason given | RA',
    'Driven warm and cold | done | RA',
    'Fluid | open | ',
  ]);
});

test('the customer’s copy has what was counted, changed and tried, without teardown, reasons and the shop’s ticks', () => {
  expect(said(answeredLists({ copy: 'customer', lists }))).toEqual([
    'Valve body | Separator plate: SP-3, new; Check balls: 4 in, 5 asked for; Feed hole: .062 → .086',
    'Final | Stall, D: 2000 rpm for 7 s: low by 100 rpm; over the cap of 5 s; Driven warm and cold: done',
  ]);
});

test('a sheet without lists, or without lines in them, says nothing', () => {
  for (const copy of ['shop', 'customer'] as const) {
    expect(answeredLists({ copy, lists: [] })).toEqual([]);
    expect(answeredLists({ copy, lists: [list(1, 'Final', 'final', [])] })).toEqual([]);
  }
});
