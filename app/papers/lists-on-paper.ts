// The lists of a job on paper: what was answered for the shop and for the customer, and empty places for the bench.
import { type Chart, rect, type Shape, text } from '../charts/shapes.ts';
import { textWidth } from '../charts/text-box.ts';
import { sayAnswer, sayAsks } from '../jobs/answer-text.ts';
import type { LineOfJob, ListOfJob } from '../jobs/lists.contract.ts';
import type { Asks, SpecList } from '../specs/spec-list.ts';
import type { BuildReportFacts } from './build-report-facts.ts';
import { type Block, type Cell, type Row, textLines, type Words } from './paper.ts';

const cell = (...words: readonly Words[]): Cell => ({ kind: 'words', words });
const named = ({ name, when }: Pick<SpecList, 'name' | 'when'>) =>
  name.toLowerCase() === when ? name : `${name}, ${when}`;

/** Nothing where the sheet has no list, or no line that the copy has a word to say on. */
export function answeredLists({ copy, lists }: Pick<BuildReportFacts, 'copy' | 'lists'>): readonly Block[] {
  return copy === 'shop' ? inFull(lists) : forCustomer(lists);
}

function inFull(lists: readonly ListOfJob[]): readonly Block[] {
  const rows = lists.flatMap((list): Row[] => {
    if (list.lines.length === 0) return [];
    return [{ kind: 'group', text: named(list) }, ...list.lines.map(answeredRow)];
  });
  if (rows.length === 0) return [];
  return [
    { kind: 'heading', text: 'Lists' },
    {
      kind: 'table',
      columns: [
        { heading: 'line', align: 'start', width: 'rest' },
        { heading: 'answer', align: 'start', width: 'rest' },
        { heading: 'by', align: 'start', width: 'content' },
      ],
      rows,
    },
  ];
}

function answeredRow({ words, asks, given, standing }: LineOfJob): Row {
  if (given === null)
    return { kind: 'row', cells: [cell({ text: words }), cell({ text: 'open', quiet: true }), cell()] };
  const said = sayAnswer(asks, given.answer);
  const answer: Words[] =
    standing === 'off'
      ? [{ text: 'off: ', strong: true }, { text: said }]
      : [{ text: said, quiet: standing === 'does not apply' }];
  if (standing === 'off') {
    answer.push({ text: given.reason === '' ? ', no reason given' : `, stands because: ${given.reason}`, quiet: true });
  }
  return { kind: 'row', cells: [cell({ text: words }), cell(...answer), cell({ text: given.by })] };
}

/**
 * What was put in, changed and tried, a row for each list. What the shop ticks for itself before it closes the unit, what
 * teardown saw and why something stands are left out.
 */
function forCustomer(lists: readonly ListOfJob[]): readonly Block[] {
  const rows = lists.flatMap(({ name, when, lines }): Row[] => {
    if (when === 'as found' || when === 'teardown') return [];
    const said = lines.flatMap(({ words, asks, given, standing }) => {
      const isShops = asks.kind === 'tick' && when === 'build';
      if (given === null || standing === 'does not apply' || isShops) return [];
      return [`${words}: ${sayAnswer(asks, given.answer)}`];
    });
    return said.length === 0
      ? []
      : [{ kind: 'row', cells: [cell({ text: name, strong: true }), cell({ text: said.join('; ') })] }];
  });
  if (rows.length === 0) return [];
  return [
    { kind: 'heading', text: 'Counted, changed and tried' },
    {
      kind: 'table',
      columns: [
        { heading: 'what', align: 'start', width: 150 },
        { heading: 'as it left the bench', align: 'start', width: 'rest' },
      ],
      rows,
    },
  ];
}

/** Every line with an empty place for its answer. */
export function listsToFill(lists: readonly SpecList[]): readonly Block[] {
  const rows = lists.flatMap((list): Row[] => {
    if (list.lines.length === 0) return [];
    const lines = list.lines.map(
      ({ words, asks }): Row => ({
        kind: 'row',
        cells: [cell({ text: words }, ...expected(asks)), placeFor(asks), figure()],
      }),
    );
    return [{ kind: 'group', text: named(list) }, ...lines];
  });
  if (rows.length === 0) return [];
  return [
    { kind: 'heading', text: 'Lists' },
    {
      kind: 'table',
      columns: [
        { heading: 'line', align: 'start', width: 'rest' },
        { heading: 'answer', align: 'start', width: answerWidth + 6 },
        { heading: 'by', align: 'start', width: 58 },
      ],
      rows,
    },
  ];
}

function expected(asks: Asks): readonly Words[] {
  if (asks.kind === 'count') return [{ text: `, ${asks.expected} expected`, quiet: true }];
  return asks.kind === 'stall' ? [{ text: `, ${sayAsks(asks)}`, quiet: true }] : [];
}

const answerWidth = 220;
const placeHeight = 15;
const placeWidth = 52;

function placeFor(asks: Asks): Cell {
  switch (asks.kind) {
    case 'tick':
      return places([{ words: '', width: placeHeight }]);
    case 'count':
      return figure();
    case 'choice':
      return places(asks.options.map(({ words }) => ({ words, width: tickSide })));
    case 'words':
      return places([{ words: '', width: answerWidth }]);
    case 'change':
      return places(['old', 'new'].map((words) => ({ words, width: 78 })));
    case 'stall':
      return places(['rpm', 's'].map((words) => ({ words, width: placeWidth })));
  }
}

/** An empty place for a figure, or for initials. */
const figure = () => places([{ words: '', width: placeWidth }]);
const tickSide = 9;
const gap = 4;

/** Boxes to write or tick in, each with its word behind it; what does not fit into a line begins the next. */
function places(boxes: ReadonlyArray<{ readonly words: string; readonly width: number }>): Cell {
  const { size } = textLines.small;
  const shapes: Shape[] = [];
  let [x, y] = [0, 0];
  for (const { words, width } of boxes) {
    const whole = width + (words === '' ? 0 : gap + textWidth(words, size));
    if (x > 0 && x + whole > answerWidth) [x, y] = [0, y + placeHeight];
    const height = Math.min(width, placeHeight);
    shapes.push(rect(x, y + (placeHeight - height) / 2, width, height, { stroke: 'mark', strokeWidth: 0.5 }));
    if (words !== '') shapes.push(text(x + width + gap, y + 10.5, words));
    x += whole + 3 * gap;
  }
  const chart: Chart = { medium: 'paper', width: answerWidth, height: y + placeHeight, title: '', shapes };
  return { kind: 'chart', chart };
}
