// The trace on the shop's comeback report: what stands out, what speaks for each cause, as found beside as built, and
// the build as it is recorded.
import { unitWords } from '../charts/amounts.ts';
import { placeStrip } from '../charts/place-strip.ts';
import { survivalCurve } from '../charts/survival-curve.ts';
import { verdictWords } from '../charts/verdict-mark.ts';
import { bySubject, readOutFirst, type Subject } from '../comebacks/by-subject.ts';
import { chartWords, clockWords, curveSentence } from '../comebacks/curve-words.ts';
import { sayAmount } from '../comebacks/say-amount.ts';
import type { AsFoundNow, CauseOfTrace } from '../comebacks/trace.contract.ts';
import type { CheckOfJob } from '../jobs/jobs.contract.ts';
import { chanceWords } from '../packs/chance-words.ts';
import { shownUnit } from '../quantities/units.ts';
import { boundsOf } from '../readings/judge-take.ts';
import { shownVerdict } from '../readings/verdict-words.ts';
import { limitsText } from './build-report-checks.ts';
import type { ComebackReportFacts } from './comeback-report-facts.ts';
import type { Block, Cell, Row, Words } from './paper.ts';

/** As tall as a line of the table and what lies round it. */
const stripSize = { width: 150, height: 16, medium: 'paper' } as const;

export function tracedBlocks(facts: ComebackReportFacts): readonly Block[] {
  return [
    ...standsOut(facts),
    ...asFound(facts),
    ...found(facts),
    ...causes(facts),
    ...settles(facts),
    ...howLongTheyLast(facts),
    ...asRecorded(facts),
  ];
}

function standsOut({ trace, ...words }: ComebackReportFacts): readonly Block[] {
  const { first } = readOutFirst(bySubject(trace.findings));
  const builds = trace.siblings === 1 ? '1 other build' : `${trace.siblings} other builds`;
  const beside = `Beside ${builds} of ${trace.familyName}${trace.areNearest ? ', the nearest in time' : ''}. `;
  const said = [heading('What stands out of the build'), paragraph({ text: `${beside}${trace.looks.sentence}` })];
  if (first.length === 0) return said;
  return [
    ...said,
    {
      kind: 'table',
      columns: [
        { heading: 'on record', align: 'start', width: 'rest' },
        { heading: 'among the others', align: 'start', width: stripSize.width },
        { heading: 'by chance in', align: 'end', width: 64 },
      ],
      rows: first.map((subject) => standingRow(subject, words)),
    },
  ];
}

function standingRow({ lead, others, least }: Subject, words: Omit<ComebackReportFacts, 'trace'>): Row {
  const { place } = lead;
  const strip: Cell =
    place === null || place.others.length === 0
      ? cell('')
      : {
          kind: 'chart',
          chart: placeStrip(
            { amount: place.amount, others: place.others, limits: place },
            unitWords(shownUnit(place.unit, words.lengthUnit), words.decimalMark),
            stripSize,
          ),
        };
  const more = others.map(({ sentence }) => ({ text: ` ${sentence}`, quiet: true }));
  const sentence: Cell = { kind: 'words', words: [{ text: lead.sentence, strong: true }, ...more] };
  return { kind: 'row', cells: [sentence, strip, cell(least === null ? '' : chanceWords(least))] };
}

function asFound({ trace, ...words }: ComebackReportFacts): readonly Block[] {
  if (trace.asFound.length === 0) return [];
  const sure = (row: AsFoundNow, amount: number | null, expanded: number | null) =>
    [amount, ...(amount === null ? [] : [expanded])]
      .flatMap((each) => (each === null ? [] : [sayAmount(each, row, words, false)]))
      .join(' ± ') || '–';
  return [
    heading('As found beside as built'),
    {
      kind: 'table',
      columns: [
        { heading: 'check', align: 'start', width: 'content' },
        { heading: 'as built', align: 'end', width: 'content' },
        { heading: 'as found', align: 'end', width: 'content' },
        { heading: 'what it says', align: 'start', width: 'rest' },
      ],
      rows: trace.asFound.map((row) => ({
        kind: 'row',
        cells: [
          cell(`${row.name}, ${shownUnit(row.unit, words.lengthUnit)}`),
          cell(sure(row, row.built.amount, row.built.expanded)),
          cell(sure(row, row.found.amount, row.found.expanded)),
          cell(row.sentence),
        ],
      })),
    },
  ];
}

function found({ trace: { foundParts, wear } }: ComebackReportFacts): readonly Block[] {
  if (foundParts.length === 0) return [];
  const parts = foundParts.map(({ words, condition, gone, note }) =>
    [`${words}: ${condition}`, gone, note].filter(Boolean).join(', '),
  );
  return [heading('Found at teardown'), { kind: 'list', items: [...parts, ...wear] }];
}

function causes({ trace }: ComebackReportFacts): readonly Block[] {
  const spoken = trace.causes.filter(({ speaksFor, certainty }) => speaksFor.length > 0 || certainty !== null);
  return [
    heading('What speaks for each cause'),
    paragraph({
      text: 'Nothing here decides. What goes along with a cause need not be it: association is not cause.',
      quiet: true,
    }),
    spoken.length === 0
      ? paragraph({ text: 'Nothing on record speaks for any of them.' })
      : {
          kind: 'table',
          columns: [
            { heading: '', align: 'start', width: 'content' },
            { heading: 'on record', align: 'start', width: 'rest' },
          ],
          rows: spoken.flatMap(causeRows),
        },
  ];
}

function causeRows({ cause, certainty, speaksFor, speaksAgainst, lookNow }: CauseOfTrace): Row[] {
  const lines = (name: string, of: CauseOfTrace['speaksFor']): Row[] =>
    of.map(({ sentence, because }) => ({
      kind: 'row',
      cells: [cell(name), { kind: 'words', words: [{ text: sentence }, { text: ` ${because}`, quiet: true }] }],
    }));
  return [
    { kind: 'group', text: certainty === null ? cause : `${cause}, ${certainty}` },
    ...lines('for', speaksFor),
    ...lines('against', speaksAgainst),
    ...lines('look now', lookNow),
  ];
}

function settles({ trace }: ComebackReportFacts): readonly Block[] {
  if (trace.wouldSettle.length === 0) return [];
  return [heading('What would settle it'), { kind: 'list', items: trace.wouldSettle }];
}

function asRecorded({ built, comeback, ...words }: ComebackReportFacts): readonly Block[] {
  const read = built.filter(({ latest }) => latest !== null);
  if (read.length === 0) return [];
  const groups = Map.groupBy(read, ({ group }) => group);
  return [
    heading(`The build as recorded, job ${comeback.build.number}`),
    {
      kind: 'table',
      columns: [
        { heading: 'check', align: 'start', width: 'rest' },
        { heading: 'limits', align: 'end', width: 'content' },
        { heading: 'as built', align: 'end', width: 'content' },
        { heading: 'verdict', align: 'start', width: 'content' },
        { heading: 'by', align: 'start', width: 'content' },
      ],
      rows: [...groups].flatMap(([group, checks]): Row[] => [
        { kind: 'group', text: group },
        ...checks.map((check) => recordedRow(check, words)),
      ]),
    },
  ];
}

function recordedRow(check: CheckOfJob, words: Pick<ComebackReportFacts, 'lengthUnit' | 'decimalMark'>): Row {
  const { latest, override } = check;
  const { lower: low, upper: high } = boundsOf(check.limits);
  const inUnit = unitWords(shownUnit(check.unit, words.lengthUnit), words.decimalMark);
  const value = latest?.value ?? null;
  const expanded = latest?.expanded == null ? '' : ` ± ${inUnit.full(latest.expanded)}`;
  const verdict = shownVerdict(latest?.verdict ?? null, check.quantity);
  const by = latest?.verdict.by == null ? null : inUnit.full(latest.verdict.by);
  return {
    kind: 'row',
    cells: [
      cell(`${check.name}, ${shownUnit(check.unit, words.lengthUnit)}`),
      cell(limitsText({ low, high }, inUnit)),
      cell(value === null ? '–' : `${inUnit.full(value)}${expanded}`),
      {
        kind: 'verdict',
        verdict,
        text: latest?.variantName ?? verdictWords(verdict, by),
      },
      cell(latest?.by ?? ''),
    ],
    ...(override === null ? {} : { note: `let stand by ${override.by}: ${override.reason}` }),
  };
}

function heading(text: string): Block {
  return { kind: 'heading', text };
}

function paragraph(...words: readonly Words[]): Block {
  return { kind: 'paragraph', words };
}

function cell(text: string): Cell {
  return { kind: 'words', words: [{ text }] };
}

function howLongTheyLast({ fleet, trace, decimalMark }: ComebackReportFacts): readonly Block[] {
  if (fleet === null) return [];
  const title = heading(`How long builds of ${trace.familyName} last`);
  const { survival, wear } = fleet;
  if (!survival.isEnough) return [title, paragraph({ text: survival.why })];
  const { curve } = survival;
  const sentence = curveSentence(curve, 'days', decimalMark);
  const facts = {
    curves: [{ name: '', steps: curve.steps, until: curve.until }],
    wear: wear.isEnough ? wear : null,
    ticks: curve.atTimes,
    clock: clockWords.days,
    title: sentence,
  };
  const chart = survivalCurve(facts, chartWords(decimalMark), { width: 500, height: 220 });
  return [title, paragraph({ text: sentence }), { kind: 'chart', chart: { ...chart, medium: 'paper' } }];
}
