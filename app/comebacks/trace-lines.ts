// What was counted, looked at, chosen and put in, beside the same lines of the siblings.
import { sayAnswer } from '../jobs/answer-text.ts';
import { enoughSiblings, placeAmong } from './how-unusual.ts';
import type { LineOfList, RecordedBuild, RecordedLine } from './recorded-build.ts';
import type { TraceFinding } from './trace.contract.ts';
import { counted, type TraceFindingBase } from './trace-checks.ts';

/** One line of a list: off or not answered, and what was chosen or written where that is a choice of the builder’s. */
export function findingsOfLine(
  build: RecordedBuild,
  recorded: RecordedLine,
  siblings: readonly RecordedLine[],
): TraceFinding[] {
  const { line, standing: own } = recorded;
  const base: TraceFindingBase = {
    subject: `${line.list}: ${line.words}`,
    kind: 'line',
    p: null,
    byChance: 0,
    isNotable: false,
    siblings: 0,
    place: null,
    telling: null,
    packName: build.packs.find(({ name }) => line.list.startsWith(name))?.name ?? null,
    opens: { kind: 'lists', jobId: build.jobId },
  };
  const others = siblings.map((sibling) => sibling.standing);
  // A line that most builds leave open is no oddity of this one.
  const isHabit = 2 * others.filter((each) => each === own).length > others.length;
  const standing = counted(base, {
    own,
    others,
    // That nobody answered says something only beside builds where somebody did.
    isNotable: (own === 'off' || (own === 'open' && others.length >= enoughSiblings)) && !isHabit,
    says: `${line.list}, ${line.words}: ${standingSaid(recorded)}`,
    beside: ({ alike, of }) => `so in ${alike} of ${of} builds`,
  });
  return [standing, ...answerOf(base, recorded, siblings)];
}

/** One line for all that was not answered, where there are too few siblings to hold each of them beside others. */
export function unansweredLines(build: RecordedBuild, siblings: readonly RecordedBuild[]): TraceFinding[] {
  const open = build.lines.filter(({ standing }) => standing === 'open');
  if (open.length === 0 || siblings.length >= enoughSiblings) return [];
  const lists = new Set(open.map(({ line }) => line.list)).size;
  const of = `${open.length} of ${build.lines.length} lines`;
  const sentence = `${of} of its lists were not answered${lists === 1 ? '' : `, on ${lists} of them`}.`;
  const opens = { kind: 'lists', jobId: build.jobId } as const;
  return [
    {
      subject: 'Its lists',
      kind: 'line',
      sentence,
      p: null,
      byChance: 0,
      isNotable: true,
      siblings: siblings.length,
      place: null,
      telling: null,
      packName: null,
      opens,
    },
  ];
}

function standingSaid({ line, answer, standing, reason }: RecordedLine): string {
  if (answer === null) return 'not answered';
  const said = sayAnswer(line.asks, answer);
  if (standing !== 'off') return said;
  return reason === '' ? `${said}, which is off` : `${said}, which is off, “${reason}”`;
}

/** A stall is ranked by its speed; a tick and a count say no more than where they stand. */
function answerOf(base: TraceFindingBase, recorded: RecordedLine, siblings: readonly RecordedLine[]): TraceFinding[] {
  const { answer, line } = recorded;
  if (answer === null || line.asks.kind === 'tick' || line.asks.kind === 'count') return [];
  if (answer.kind === 'stalled') return stallOf(base, line, answer.rpm, siblings);
  const own = wordOf(recorded);
  const others = siblings.map(wordOf).filter((word) => word !== '');
  return [
    counted(base, {
      own,
      others,
      isNotable: false,
      says: `${line.list}, ${line.words}: ${own}`,
      beside: ({ alike, of, commonest, commonestCount }) =>
        commonest === own ? `so in ${alike} of ${of} builds` : `${alike} of ${of} so, ${commonestCount} ${commonest}`,
    }),
  ];
}

// Written twice with other capitals it is the same fluid.
function wordOf({ line, answer }: RecordedLine): string {
  return answer === null ? '' : sayAnswer(line.asks, answer).trim().toLowerCase();
}

function stallOf(
  base: TraceFindingBase,
  line: LineOfList,
  rpm: number,
  siblings: readonly RecordedLine[],
): TraceFinding[] {
  const others = siblings.flatMap(({ answer }) => (answer?.kind === 'stalled' ? [answer.rpm] : []));
  const says = `${line.list}, ${line.words} ${rpm} rpm`;
  if (others.length < enoughSiblings) {
    return [
      {
        ...base,
        siblings: others.length,
        sentence: `${says}; not enough yet, ${others.length} of ${enoughSiblings} siblings.`,
      },
    ];
  }
  const { p, byChance, below, above } = placeAmong(rpm, others);
  const rest =
    below === above
      ? `in the middle of ${others.length} builds`
      : above > below
        ? `slower than ${above} of ${others.length} builds`
        : `faster than ${below} of ${others.length} builds`;
  return [{ ...base, siblings: others.length, sentence: `${says}: ${rest}.`, p, byChance }];
}
