// The purchase list: what has run low, supplier by supplier, with the cores that go back to each.
import type { DecimalMark } from '../quantities/format-amount.ts';
import { formatMoney } from '../quantities/money.ts';
import type { Core, ReorderLine } from '../stock/parts.contract.ts';
import { writeDay } from './dates.ts';
import type { Block, Cell, Column, Paper, PaperSize, Row, Table } from './paper.ts';

export type PurchaseListFacts = {
  readonly paper: PaperSize;
  readonly decimalMark: DecimalMark;
  readonly shopName: string;
  readonly isDemo: boolean;
  /** A business day. */
  readonly printedOn: string;
  readonly lines: readonly ReorderLine[];
  /** Cores to send back that are not settled yet. */
  readonly cores: readonly Core[];
};

const demoWords = 'demo shop, everything invented';

/** The list as data, in its order; a painter only places it. */
export function purchaseList(facts: PurchaseListFacts): Paper {
  const { shopName, isDemo, printedOn } = facts;
  return {
    size: facts.paper,
    language: 'en',
    title: `Purchase list, ${writeDay(printedOn)}`,
    author: shopName,
    subject: 'Parts at or under their reorder points, by supplier',
    madeAt: `${printedOn}T12:00:00Z`,
    head: {
      left: `Purchase list · ${writeDay(printedOn)}`,
      right: isDemo ? `${shopName} · ${demoWords}` : shopName,
    },
    foot: { left: isDemo ? 'Thoubook, demo shop' : 'Thoubook', middle: '' },
    blocks: [masthead(facts), summary(facts), ...suppliersOf(facts).flatMap((name) => supplier(facts, name))],
  };
}

function masthead({ shopName, isDemo, printedOn }: PurchaseListFacts): Block {
  return {
    kind: 'masthead',
    title: 'Purchase list',
    by: [{ text: shopName }, ...(isDemo ? [{ text: ` · ${demoWords}`, quiet: true }] : [])],
    right: [[{ text: writeDay(printedOn), quiet: true }]],
  };
}

function summary(facts: PurchaseListFacts): Block {
  const { lines, cores } = facts;
  if (lines.length === 0 && cores.length === 0) {
    const text = 'Nothing is at or under its reorder point, and no core has to go back.';
    return { kind: 'paragraph', words: [{ text }] };
  }
  const parts = lines.length === 1 ? 'one part' : `${lines.length} parts`;
  const quantity = cores.reduce((sum, core) => sum + core.quantity, 0);
  return {
    kind: 'facts',
    facts: [
      { name: 'To buy', value: parts },
      { name: 'All together', value: totalWords(facts, lines) },
      { name: 'Cores to send back', value: quantity === 0 ? 'none' : String(quantity) },
    ],
  };
}

/** By name; those whose supplier nobody named come last. */
function suppliersOf({ lines, cores }: PurchaseListFacts): readonly string[] {
  const names = new Set([...lines.map((line) => line.supplier), ...cores.map(supplierOf)]);
  return [...names].sort((one, other) => (one === '' ? 1 : other === '' ? -1 : one < other ? -1 : 1));
}

function supplierOf(core: Core): string {
  return core.part?.supplier ?? '';
}

function supplier(facts: PurchaseListFacts, name: string): readonly Block[] {
  const lines = facts.lines.filter((line) => line.supplier === name);
  const cores = facts.cores.filter((core) => supplierOf(core) === name);
  return [
    { kind: 'heading', text: name === '' ? 'No supplier named' : name },
    ...(lines.length === 0 ? [] : [partsTable(facts, lines)]),
    ...(cores.length === 0 ? [] : [coresTable(facts, cores)]),
  ];
}

function partsTable(facts: PurchaseListFacts, lines: readonly ReorderLine[]): Table {
  const { decimalMark } = facts;
  const total: Row = {
    kind: 'row',
    cells: [
      words(''),
      strong('All together'),
      ...Array.from({ length: 5 }, () => words('')),
      strong(sum(facts, lines)),
    ],
    ...(unpriced(lines) === 0 ? {} : { note: `without ${unpricedWords(lines)}` }),
  };
  return {
    kind: 'table',
    columns: [
      column('number', 'start', 'content'),
      column('description', 'start', 'rest'),
      column('on hand', 'end', 'content'),
      column('reorder at', 'end', 'content'),
      column('buy', 'end', 'content'),
      column('unit', 'start', 'content'),
      column('each', 'decimal', 'content'),
      column('line', 'decimal', 'content'),
    ],
    rows: [
      ...lines.map(
        (line): Row => ({
          kind: 'row',
          cells: [
            words(line.number),
            words(line.description),
            words(String(line.onHand)),
            words(line.reorderPoint === null ? '–' : String(line.reorderPoint)),
            strong(String(line.suggested)),
            words(line.unitOfIssue),
            words(moneyOr(line.cost_cents, decimalMark)),
            words(moneyOr(line.lineCost_cents, decimalMark)),
          ],
        }),
      ),
      total,
    ],
  };
}

function coresTable({ decimalMark }: PurchaseListFacts, cores: readonly Core[]): Table {
  return {
    kind: 'table',
    columns: [
      column('cores to send back', 'start', 'rest'),
      column('job', 'end', 'content'),
      column('due', 'start', 'content'),
      column('send', 'end', 'content'),
      column('charge each', 'decimal', 'content'),
    ],
    rows: cores.map((core) => ({
      kind: 'row',
      cells: [
        words(core.what),
        words(core.job === null ? '' : String(core.job.number)),
        words(core.dueOn === null ? '' : `${writeDay(core.dueOn)}${core.isOverdue ? ', overdue' : ''}`),
        strong(String(core.quantity)),
        words(moneyOr(core.charge_cents, decimalMark)),
      ],
    })),
  };
}

function totalWords(facts: PurchaseListFacts, lines: readonly ReorderLine[]): string {
  const total = sum(facts, lines);
  return unpriced(lines) === 0 ? total : `${total}, without ${unpricedWords(lines)}`;
}

function sum({ decimalMark }: PurchaseListFacts, lines: readonly ReorderLine[]): string {
  return formatMoney(
    lines.reduce((cents, line) => cents + (line.lineCost_cents ?? 0), 0),
    decimalMark,
  );
}

function unpriced(lines: readonly ReorderLine[]): number {
  return lines.filter((line) => line.lineCost_cents === null).length;
}

function unpricedWords(lines: readonly ReorderLine[]): string {
  const count = unpriced(lines);
  return count === 1 ? 'one part whose cost is not known' : `${count} parts whose cost is not known`;
}

function moneyOr(cents: number | null, decimalMark: DecimalMark): string {
  return cents === null ? '–' : formatMoney(cents, decimalMark);
}

function words(text: string): Cell {
  return { kind: 'words', words: [{ text }] };
}

function strong(text: string): Cell {
  return { kind: 'words', words: [{ text, strong: true }] };
}

function column(heading: string, align: Column['align'], width: Column['width']): Column {
  return { heading, align, width };
}
