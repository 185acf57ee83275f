// A blank bench sheet: what a family asks for, with empty places for what is read, for the day the machine is dead.
import { unitWords } from '../charts/amounts.ts';
import { type Chart, rect } from '../charts/shapes.ts';
import { slotName } from '../packs/slot-name.ts';
import type { DecimalMark } from '../quantities/format-amount.ts';
import { type LengthUnit, shownUnit } from '../quantities/units.ts';
import { boundsOf } from '../readings/judge-take.ts';
import { methodWords } from '../readings/method-words.ts';
import type { SavedCheck, SavedList, SavedPack } from '../specs/specs.contract.ts';
import { limitsText } from './build-report-checks.ts';
import { writeDay } from './dates.ts';
import { listsToFill } from './lists-on-paper.ts';
import { type PicturesOnPaper, pictureBlocks } from './marked-pictures.ts';
import type { Block, Cell, Column, Paper, PaperSize } from './paper.ts';

export type BenchSheetFacts = {
  readonly paper: PaperSize;
  readonly lengthUnit: LengthUnit;
  readonly decimalMark: DecimalMark;
  readonly shopName: string;
  readonly isDemo: boolean;
  /** yyyy-mm-dd. */
  readonly printedOn: string;
  readonly familyName: string;
  readonly revisionNumber: number;
  /** The job it is for, or null for any of the family. */
  readonly job: { readonly number: number; readonly unit: string; readonly customerName: string } | null;
  readonly packs: readonly SavedPack[];
  readonly checks: readonly SavedCheck[];
  readonly lists: readonly SavedList[];
  readonly onPictures: PicturesOnPaper;
};

export function benchSheet(facts: BenchSheetFacts): Paper {
  const { familyName, shopName, job, isDemo } = facts;
  const loose = facts.checks.filter((check) => check.packId === null);
  return {
    size: facts.paper,
    language: 'en',
    title: `Bench sheet, ${familyName}`,
    author: shopName,
    subject: `${familyName}, sheet ${facts.revisionNumber}`,
    madeAt: `${facts.printedOn}T12:00:00Z`,
    head: {
      left: `Bench sheet, ${familyName}${job ? `, job ${job.number}` : ''}`,
      right: job ? shopName : 'job ____________',
    },
    foot: { left: isDemo ? 'Thoubook, demo shop' : 'Thoubook', middle: `sheet ${facts.revisionNumber}` },
    blocks: [
      {
        kind: 'masthead',
        title: 'Bench sheet',
        by: [{ text: shopName }],
        right: [
          [{ text: familyName, strong: true }, { text: `, sheet ${facts.revisionNumber}` }],
          [{ text: 'to be typed into the book afterwards' }],
          [{ text: writeDay(facts.printedOn), quiet: true }],
        ],
      },
      {
        kind: 'facts',
        facts: [
          { name: 'Job', value: job ? String(job.number) : blank },
          { name: 'Customer', value: job?.customerName ?? blank },
          { name: 'Unit and serial', value: job?.unit ?? `${familyName} ${blank}` },
          { name: 'Read by, on', value: blank },
        ],
      },
      ...facts.packs.flatMap((pack) => packBlocks(pack, facts)),
      ...(loose.length === 0 ? [] : looseChecks(loose, facts)),
      ...listsToFill(facts.lists),
      ...pictureBlocks(facts.onPictures, facts.paper),
    ],
  };
}

const blank = '______________';

/** An empty place to write a figure in. */
const place: Cell = { kind: 'chart', chart: box(52) };

function box(width: number): Chart {
  const height = 15;
  return {
    medium: 'paper',
    width,
    height,
    title: '',
    shapes: [rect(0, 0, width, height, { stroke: 'mark', strokeWidth: 0.5 })],
  };
}

const words = (text: string): Cell => ({ kind: 'words', words: [{ text }] });
const placeColumn = (heading: string): Column => ({ heading, align: 'start', width: 58 });

function packBlocks(pack: SavedPack, facts: BenchSheetFacts): readonly Block[] {
  const checks = facts.checks.filter((check) => check.packId === pack.packId);
  return [
    { kind: 'heading', text: `${pack.name}, from the piston up` },
    ...(pack.note === '' ? [] : [{ kind: 'paragraph', words: [{ text: pack.note, quiet: true }] } as const]),
    {
      kind: 'table',
      columns: [
        { heading: 'slot', align: 'start', width: 'content' },
        { heading: 'how it lies', align: 'start', width: 'rest' },
        placeColumn('tag'),
        placeColumn(`found, ${facts.lengthUnit}`),
        placeColumn('tag'),
        placeColumn(`built, ${facts.lengthUnit}`),
      ],
      rows: pack.slots.map((slot, index) => ({
        kind: 'row',
        cells: [words(slotName(pack.slots, index)), words(slot.facing), place, place, place, place],
      })),
    },
    ...checks.flatMap((check) => spotBlocks(check, facts)),
  ];
}

/** One line a spot: push-down and air where it is read by air, else one figure; found and built. */
function spotBlocks(check: SavedCheck, facts: BenchSheetFacts): readonly Block[] {
  const parts = check.method === 'air' ? ['push', 'air'] : ['reads'];
  return [
    {
      kind: 'paragraph',
      words: [{ text: check.name, strong: true }, { text: `, ${asks(check, facts)}` }],
    },
    {
      kind: 'table',
      columns: [
        { heading: 'spot', align: 'start', width: 'rest' },
        ...parts.map((part) => placeColumn(`found, ${part}`)),
        ...parts.map((part) => placeColumn(`built, ${part}`)),
        ...parts.map((part) => placeColumn(`again, ${part}`)),
      ],
      rows: Array.from({ length: check.spots }, (_, spot) => ({
        kind: 'row',
        cells: [words(spotName(spot, check.spots)), ...Array.from({ length: 3 * parts.length }, () => place)],
      })),
    },
  ];
}

function spotName(spot: number, spots: number): string {
  return spots === 1 ? 'once' : `${spot + 1}, at ${Math.round((360 * spot) / spots)}°`;
}

function looseChecks(checks: readonly SavedCheck[], facts: BenchSheetFacts): readonly Block[] {
  const groups = Map.groupBy(checks, (check) => check.group);
  return [
    { kind: 'heading', text: 'Everything else' },
    {
      kind: 'table',
      columns: [
        { heading: 'check', align: 'start', width: 'rest' },
        { heading: 'limits', align: 'start', width: 'content' },
        placeColumn('found'),
        placeColumn('built'),
        placeColumn('by'),
      ],
      rows: [...groups].flatMap(([group, ofGroup]) => [
        { kind: 'group', text: group } as const,
        ...ofGroup.map(
          (check) =>
            ({ kind: 'row', cells: [words(check.name), words(asks(check, facts)), place, place, place] }) as const,
        ),
      ]),
    },
  ];
}

/** "20–30 thou by air, aim at 25". */
function asks(check: SavedCheck, { lengthUnit, decimalMark }: BenchSheetFacts): string {
  const { limits } = check;
  const unit = shownUnit(check.unit, lengthUnit);
  const amounts = unitWords(unit, decimalMark);
  if (limits.kind === 'variants') {
    return limits.variants.map((variant) => `${variant.name}: ${amounts.full(variant.nominal)} ${unit}`).join(' or ');
  }
  const { lower, upper } = boundsOf(limits);
  const aim = limits.kind === 'target' ? `, aim at ${amounts.short(limits.target)}` : '';
  return `${limitsText({ low: lower, high: upper }, amounts)} ${unit} ${methodWords(check.method)}`.trim() + aim;
}
