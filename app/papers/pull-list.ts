// The pull list: the plates to fetch for all packs of a unit, place by place, and what comes out for them.
import { type Chart, rect } from '../charts/shapes.ts';
import type { UnitPlan } from '../packs/packs.contract.ts';
import { type PulledPlate, pullList } from '../packs/pull-list.ts';
import { formatLength } from '../quantities/format-amount.ts';
import type { Settings } from '../shop/shop.contract.ts';
import { pullCaution } from './cautions.ts';
import { writeDay } from './dates.ts';
import type { Block, Column, Paper, PaperSize, Row } from './paper.ts';

export type PullListFacts = {
  readonly paper: PaperSize;
  readonly settings: Pick<Settings, 'lengthUnit' | 'decimalMark'>;
  readonly shopName: string;
  readonly isDemo: boolean;
  readonly jobNumber: number;
  readonly caseTag: string;
  readonly family: string;
  /** A business day. */
  readonly printedOn: string;
  readonly plan: UnitPlan | null;
  readonly way: 'inOrder' | 'together';
};

/** The list as data, in its order; a painter only places it. */
export function pullListPaper(facts: PullListFacts): Paper {
  const { shopName, isDemo, printedOn, jobNumber } = facts;
  const shop = isDemo ? `${shopName} · demo shop, everything invented` : shopName;
  return {
    size: facts.paper,
    language: 'en',
    title: `Pull list, job ${jobNumber}`,
    author: shopName,
    subject: 'Plates to pull for all packs of a unit',
    madeAt: `${printedOn}T12:00:00Z`,
    head: { left: `Pull list · job ${jobNumber}`, right: shop },
    foot: { left: isDemo ? 'Thoubook, demo shop' : 'Thoubook', middle: '' },
    blocks: [
      {
        kind: 'masthead',
        title: `Pull list, job ${jobNumber}`,
        by: [{ text: shop }],
        right: [
          [{ text: [facts.family, facts.caseTag && `case ${facts.caseTag}`].filter(Boolean).join(', ') }],
          [{ text: writeDay(printedOn), quiet: true }],
        ],
      },
      ...platesOf(facts),
    ],
  };
}

function platesOf({ plan, way, settings }: PullListFacts): readonly Block[] {
  const { into, out } = pullList(plan, way);
  if (into.length === 0) return [{ kind: 'paragraph', words: [{ text: 'Nothing has to be pulled.' }] }];
  const order = way === 'together' ? (plan?.sharing ?? []).flatMap((group) => group.order) : [];
  const write = (length_nm: number) => formatLength(length_nm, settings.lengthUnit, undefined, settings.decimalMark);
  const row = (plate: PulledPlate): Row => ({
    kind: 'row',
    cells: [
      { kind: 'chart', chart: tickBox },
      { kind: 'words', words: [{ text: plate.label || 'no tag' }] },
      { kind: 'words', words: [{ text: write(plate.height_nm), strong: true }] },
      { kind: 'words', words: [{ text: `${plate.packName}, ${plate.slotName}` }] },
    ],
  });
  const places = [...Map.groupBy(into, ({ place }) => place)];
  return [
    ...(order.length > 0 ? [{ kind: 'list', items: order } as const] : []),
    {
      kind: 'table',
      columns: columns('pull', 'goes into', settings.lengthUnit),
      rows: places.flatMap(([place, plates]): Row[] => [{ kind: 'group', text: place }, ...plates.map(row)]),
    },
    { kind: 'heading', text: 'What comes out' },
    { kind: 'table', columns: columns('plate', 'comes out of', settings.lengthUnit), rows: out.map(row) },
    { kind: 'paragraph', words: [{ text: pullCaution }], small: true },
  ];
}

const tickSide = 9;
const tickBox: Chart = {
  medium: 'paper',
  width: tickSide,
  height: tickSide,
  title: '',
  shapes: [rect(0, 0, tickSide, tickSide, { stroke: 'mark', strokeWidth: 0.5 })],
};

function columns(plate: string, where: string, unit: string): Column[] {
  return [
    { heading: '', align: 'start', width: tickBox.width },
    { heading: plate, align: 'start', width: 'rest' },
    { heading: unit, align: 'decimal', width: 'content' },
    { heading: where, align: 'start', width: 'rest' },
  ];
}
