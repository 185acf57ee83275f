// The packs of a build report: to scale on the first page, then each with its clock, its band and its mock-ups.
import { lengthWords, writeSure } from '../charts/amounts.ts';
import { band } from '../charts/band.ts';
import { clock } from '../charts/clock.ts';
import type { Chart } from '../charts/shapes.ts';
import { type Stack, stackHeight_nm } from '../charts/stack.ts';
import { stackUp } from '../charts/stack-up.ts';
import { keptTraceChart } from '../charts/trace.ts';
import { limitsText, verdictText, wordsOf } from './build-report-checks.ts';
import type { BuildReportFacts, CheckFacts, MockUpFacts, PackFacts } from './build-report-facts.ts';
import { type Block, contentWidth, type Row, type Words } from './paper.ts';

const packsInRow = 3;
const clockWidth = 176;
const besideClock = clockWidth + 12;

/** The clearance a pack is drawn with: by calculation where the gap is known, else as it was read. */
function drawnClearance(pack: PackFacts): number | null {
  return pack.calculated_nm ?? pack.check?.final?.value ?? null;
}

/** A calculated clearance that the reading does not repeat to the last figure is marked, and the note says both. */
function isMarked(pack: PackFacts, facts: BuildReportFacts): boolean {
  const read = pack.check?.final?.value ?? null;
  if (pack.calculated_nm === null || read === null) return pack.calculated_nm !== null;
  const words = lengthWords(facts.lengthUnit, facts.decimalMark);
  return words.full(pack.calculated_nm) !== words.full(read);
}

/** The packs beside each other on one scale, as rows of charts that share `width`. */
export function packCharts(facts: BuildReportFacts, width: number, height: number): readonly (readonly Chart[])[] {
  const words = lengthWords(facts.lengthUnit, facts.decimalMark);
  const stacks = facts.packs.map(
    (pack): Stack => ({
      pieces: pack.pieces.map(({ isNew, label, kind, height_nm, tag }) => ({
        kind,
        height_nm,
        label: isNew ? `${label}, new` : label,
        // The mark on a piece is the shop's own.
        ...(tag === undefined || facts.copy === 'customer' ? {} : { tag }),
        ...(isNew ? { change: 'enters' as const } : {}),
      })),
      clearance_nm: drawnClearance(pack),
    }),
  );
  const tallest_nm = Math.max(1, ...stacks.map(stackHeight_nm));
  const each = width / Math.min(packsInRow, Math.max(2, facts.packs.length));
  const draw = (asked: number) =>
    stacks.map((stack, index) =>
      stackUp(stack, {
        name: facts.packs[index]!.name,
        width: each,
        height: asked,
        medium: 'paper',
        tallest_nm,
        clearanceLabel: isMarked(facts.packs[index]!, facts) ? 'clearance *' : 'clearance',
        write: words.full,
      }),
    );
  // A pack of many thin plates may need more height for its labels; its neighbours then grow with it.
  const tallest = Math.max(height, ...draw(height).map((chart) => chart.height));
  const charts = draw(tallest);
  const rows: Chart[][] = [];
  for (let at = 0; at < charts.length; at += packsInRow) rows.push(charts.slice(at, at + packsInRow));
  return rows;
}

/** What each asterisk means. */
export function markedNotes(facts: BuildReportFacts): readonly (readonly Words[])[] {
  return facts.packs
    .filter((pack) => isMarked(pack, facts))
    .map((pack) => [{ text: `* ${pack.name} by calculation. ${readingText(pack, facts)}` }]);
}

function readingText({ check }: PackFacts, facts: BuildReportFacts): string {
  if (check === null || check.final === null) return 'It has not been read.';
  const words = wordsOf(check, facts);
  const how = check.method === '' ? 'It' : `${check.method.charAt(0).toUpperCase()}${check.method.slice(1)} it`;
  const { min, max, spots } = check.final;
  const around = spots < 2 ? '' : `, from ${words.short(min)} to ${words.short(max)} around the drum`;
  return `${how} read ${writeSure(check.final, words)}${around}.`;
}

/** A heading, the clock beside the band and what they say, then the mock-ups, for every pack that has anything to show. */
export function packSections(facts: BuildReportFacts): readonly Block[] {
  const shown = facts.packs.filter((pack) => pack.check?.final != null || pack.mockUps.length > 0);
  return shown.flatMap((pack): readonly Block[] => [
    { kind: 'heading', text: `${pack.name}, how it was measured and built` },
    ...measured(pack, facts),
    ...traced(pack, facts),
    ...mockUpTable(pack, facts),
    ...clutchEstimated(pack, facts),
  ]);
}

function measured(pack: PackFacts, facts: BuildReportFacts): readonly Block[] {
  const { check } = pack;
  if (check === null || check.final === null) {
    return [{ kind: 'paragraph', words: [{ text: 'The clearance has not been read as built.' }] }];
  }
  const words = wordsOf(check, facts);
  const { limits, target } = check;
  const harmonic = pack.harmonic === null ? null : { ...pack.harmonic, mean: check.final.value };
  const hasClock = pack.spots.length > 1;
  const bandChart = band(
    {
      limits,
      target,
      guard: check.final.expanded,
      readings: pack.spots.map((spot) => spot.value),
      now: { ...check.final, label: 'as built' },
      predicted: predictedOf(pack),
      asFound: check.asFound?.value ?? null,
    },
    words,
    { width: contentWidth(facts.paper) - (hasClock ? besideClock : 0), medium: 'paper' },
  );
  const blocks: Block[] = [
    { kind: 'paragraph', words: clearanceSentence(check, facts) },
    { kind: 'chart', chart: bandChart },
    { kind: 'paragraph', small: true, words: [{ text: aroundSentence(pack, facts), quiet: true }] },
  ];
  if (facts.copy === 'shop' && pack.setup.length > 0) {
    blocks.push({
      kind: 'paragraph',
      small: true,
      words: [{ text: 'Set up: ', strong: true }, { text: `${pack.setup.join('; ')}.` }],
    });
  }
  if (!hasClock) return [{ kind: 'together', left: null, blocks }];
  const chart = clock({ limits, target, readings: pack.spots, harmonic }, words, {
    width: clockWidth,
    medium: 'paper',
  });
  return [{ kind: 'together', left: { chart, width: besideClock }, blocks }];
}

const tracesInRow = 2;
const traceHeight = 60;

/** What the gauge said at each spot, beside each other; the shop's copy alone. */
function traced({ traces }: PackFacts, facts: BuildReportFacts): readonly Block[] {
  if (facts.copy === 'customer' || traces.length === 0) return [];
  const words = lengthWords(facts.lengthUnit, facts.decimalMark);
  const size = { width: contentWidth(facts.paper) / tracesInRow - 8, height: traceHeight, medium: 'paper' } as const;
  const rows: Block[] = [];
  for (let at = 0; at < traces.length; at += tracesInRow) {
    const shown = traces.slice(at, at + tracesInRow);
    const spots = shown.map(({ spot }) => `spot ${spot}`).join(', ');
    const practice = shown.some(({ isPractice }) => isPractice) ? ' Practice, made up.' : '';
    rows.push(
      {
        kind: 'paragraph',
        small: true,
        words: [{ text: `Gauge’s trace, ${spots}: ${shown[0]!.lineName}.${practice}`, quiet: true }],
      },
      { kind: 'charts', charts: shown.map((trace) => keptTraceChart(trace, words, size)) },
    );
  }
  return rows;
}

/** What the figures of the sheet come to; the shop's copy alone. */
function clutchEstimated({ clutch }: PackFacts, facts: BuildReportFacts): readonly Block[] {
  if (facts.copy === 'customer' || clutch.length === 0) return [];
  const text = `${clutch.join(' ')} The maker’s manual comes first.`;
  return [{ kind: 'paragraph', small: true, words: [{ text: 'The clutch, an estimate: ', strong: true }, { text }] }];
}

/** What the last mock-up was expected to read. */
function predictedOf(pack: PackFacts) {
  const predicted = pack.mockUps[pack.mockUps.length - 1]?.predicted ?? null;
  return predicted === null ? null : { ...predicted, label: 'predicted' };
}

function clearanceSentence(check: CheckFacts, facts: BuildReportFacts): readonly Words[] {
  const words = wordsOf(check, facts);
  const method = check.method === '' ? '' : ` ${check.method}`;
  const limits = limitsText(check.limits, words);
  const target = check.target === null ? '' : `, target ${words.short(check.target)}`;
  const against = limits === '' ? '' : ` against ${limits}${target}`;
  return [
    { text: `Clearance${method} ` },
    { text: `${writeSure(check.final!, words)} ${facts.lengthUnit}`, strong: true },
    { text: `${against}: ` },
    { text: `${verdictText(check, facts)}.`, strong: true },
  ];
}

function aroundSentence({ check, harmonic, spots }: PackFacts, facts: BuildReportFacts): string {
  if (check?.final == null || check.final.spots < 2)
    return 'Read at one spot: how even it is around the drum is not known.';
  const words = wordsOf(check, facts);
  const uneven = `Uneven by ${words.short(check.final.max - check.final.min)} around the drum`;
  if (spots.length < 4) return `${uneven}; with ${spots.length} spots no tilt can be claimed.`;
  if (harmonic === null) return `${uneven}.`;
  const loosest =
    harmonic.loosestAtDegrees === null ? '' : `, loosest at ${Math.round(harmonic.loosestAtDegrees)}° from the mark`;
  return `${uneven}; tilt ${words.full(harmonic.amplitude)}${loosest}.`;
}

/** Every mock-up with what was changed, what it should then read and what it read. */
function mockUpTable({ mockUps, check }: PackFacts, facts: BuildReportFacts): readonly Block[] {
  if (mockUps.length === 0) return [];
  const words = check === null ? lengthWords(facts.lengthUnit, facts.decimalMark) : wordsOf(check, facts);
  const value = (amount: MockUpFacts['read']) => (amount === null ? '' : words.full(amount.value));
  const expanded = (amount: MockUpFacts['read']) =>
    amount?.expanded == null ? '' : `± ${words.full(amount.expanded)}`;
  const rows = mockUps.map(
    (mockUp): Row => ({
      kind: 'row',
      cells: [
        { kind: 'words', words: [{ text: mockUp.number === 0 ? 'as found' : `mock-up ${mockUp.number}` }] },
        { kind: 'words', words: [{ text: mockUp.changed }] },
        { kind: 'words', words: [{ text: value(mockUp.predicted) }] },
        { kind: 'words', words: [{ text: expanded(mockUp.predicted) }] },
        { kind: 'words', words: [{ text: value(mockUp.read), strong: true }] },
        { kind: 'words', words: [{ text: expanded(mockUp.read) }] },
      ],
      ...(facts.copy === 'shop' && mockUp.note !== '' ? { note: mockUp.note } : {}),
    }),
  );
  return [
    {
      kind: 'table',
      columns: [
        { heading: facts.lengthUnit, align: 'start', width: 'content' },
        { heading: 'what was changed', align: 'start', width: 'rest' },
        { heading: 'predicted', align: 'decimal', width: 52 },
        { heading: '', align: 'decimal', width: 36 },
        { heading: 'read', align: 'decimal', width: 52 },
        { heading: '', align: 'decimal', width: 36 },
      ],
      rows,
    },
  ];
}
