// The estimate a customer holds: what was found, what it comes to line by line, what was agreed. No cost stands on it.
import type { LineKind } from '../jobs/estimate.contract.ts';
import type { Changes } from '../jobs/estimate-changes.ts';
import { kindHeadings, kindsInOrder } from '../jobs/estimate-kinds.ts';
import { roundingWords, type Totals } from '../jobs/estimate-total.ts';
import { formatQuantity, formatTaxRate } from '../jobs/estimate-typed.ts';
import type { DecimalMark } from '../quantities/format-amount.ts';
import { formatMoney } from '../quantities/money.ts';
import { writeDay } from './dates.ts';
import type { Block, Cell, Column, Paper, PaperSize, Row, Table } from './paper.ts';
import type { UnitOnPaper } from './unit-on-paper.ts';

export type EstimateFacts = {
  readonly paper: PaperSize;
  readonly decimalMark: DecimalMark;
  readonly shopName: string;
  readonly isDemo: boolean;
  readonly jobNumber: number;
  readonly number: number;
  /** YYYY-MM-DD. */
  readonly givenOn: string;
  readonly givenBy: string;
  readonly customerName: string;
  readonly unit: UnitOnPaper;
  readonly complaint: string;
  readonly whatWasFound: string;
  readonly lines: ReadonlyArray<{
    readonly kind: LineKind;
    readonly description: string;
    readonly quantity_hundredths: number;
    readonly unitPrice_cents: number;
    readonly amount_cents: number;
    readonly isTaxable: boolean;
  }>;
  readonly totals: Totals;
  readonly taxLabel: string;
  readonly taxPerHundredThousand: number;
  readonly deposited_cents: number;
  readonly approvals: ReadonlyArray<{
    readonly approvedBy: string;
    readonly how: 'in person' | 'phone' | 'message';
    /** YYYY-MM-DD. */
    readonly approvedOn: string;
    readonly upTo_cents: number;
    readonly by: string;
  }>;
  /** Against the estimate that was approved before this one was given. */
  readonly changes: (Changes & { readonly sinceNumber: number }) | null;
};

const demoWords = 'demo shop, everything invented';

/** The estimate as data, in its order; a painter only places it. */
export function estimatePaper(facts: EstimateFacts): Paper {
  const { shopName, isDemo, givenOn } = facts;
  const title = `Estimate ${facts.number}, job ${facts.jobNumber}`;
  return {
    size: facts.paper,
    language: 'en',
    title,
    author: shopName,
    subject: `${facts.unit.family} for ${facts.customerName}`,
    madeAt: `${givenOn}T12:00:00Z`,
    head: {
      left: `${title} · ${facts.customerName}`,
      right: isDemo ? `${shopName} · ${demoWords}` : shopName,
    },
    foot: { left: isDemo ? 'Thoubook, demo shop' : 'Thoubook', middle: '' },
    blocks: [
      masthead(facts),
      who(facts),
      ...whatWasFound(facts),
      linesTable(facts),
      sumsTable(facts),
      ...changes(facts),
      ...agreed(facts),
      ...toSign(facts),
    ],
  };
}

/** "approved by Tam Okoro by phone on 18 November 2026, up to 1,240.00". */
export function approvalWords(
  { approvedBy, how, approvedOn, upTo_cents }: EstimateFacts['approvals'][number],
  decimalMark: DecimalMark,
): string {
  const way = how === 'in person' ? how : `by ${how}`;
  return `approved by ${approvedBy} ${way} on ${writeDay(approvedOn)}, up to ${formatMoney(upTo_cents, decimalMark)}`;
}

function masthead(facts: EstimateFacts): Block {
  return {
    kind: 'masthead',
    title: 'Estimate',
    by: [{ text: facts.shopName }, ...(facts.isDemo ? [{ text: ` · ${demoWords}`, quiet: true }] : [])],
    right: [
      [{ text: `Job ${facts.jobNumber}`, strong: true }, { text: `, estimate ${facts.number}` }],
      [{ text: `for ${facts.customerName}` }],
      [{ text: writeDay(facts.givenOn), quiet: true }],
    ],
  };
}

function who({ unit, complaint, givenBy }: EstimateFacts): Block {
  const join = (...parts: readonly string[]) => parts.filter((part) => part !== '').join(', ');
  const caseTag = unit.caseTag === '' ? '' : `case tag ${unit.caseTag}`;
  return {
    kind: 'facts',
    facts: [
      { name: 'Unit', value: join(`${unit.family} ${unit.serial}`.trim(), caseTag) },
      { name: 'Vehicle and use', value: join(unit.vehicle, unit.use) },
      { name: 'Came in with', value: complaint === '' ? '–' : complaint },
      { name: 'Given by', value: givenBy },
    ],
  };
}

function whatWasFound({ whatWasFound: found }: EstimateFacts): readonly Block[] {
  if (found === '') return [];
  const paragraphs = found.split(/\n+/).map((text): Block => ({ kind: 'paragraph', words: [{ text }] }));
  return [{ kind: 'heading', text: 'What was found' }, ...paragraphs];
}

function linesTable(facts: EstimateFacts): Table {
  const { decimalMark } = facts;
  const rows = kindsInOrder.flatMap((kind): Row[] => {
    const ofKind = facts.lines.filter((line) => line.kind === kind);
    if (ofKind.length === 0) return [];
    return [
      { kind: 'group', text: kindHeadings[kind] },
      ...ofKind.map((line): Row => {
        const { description, quantity_hundredths, unitPrice_cents, amount_cents, isTaxable } = line;
        const hours = kind === 'labour' ? ' h' : '';
        return {
          kind: 'row',
          cells: [
            words(description),
            words(`${formatQuantity(quantity_hundredths, decimalMark)}${hours}`),
            words(formatMoney(unitPrice_cents, decimalMark)),
            words(isTaxable ? 'taxed' : ''),
            words(formatMoney(amount_cents, decimalMark)),
          ],
        };
      }),
    ];
  });
  return {
    kind: 'table',
    columns: [
      column('', 'start', 'rest'),
      column('quantity', 'end', 'content'),
      column('each', 'decimal', 'content'),
      column('', 'start', 'content'),
      column('amount', 'decimal', 64),
    ],
    rows,
  };
}

/** The sums, and under them how they were rounded. */
function sumsTable(facts: EstimateFacts): Block {
  const { totals, decimalMark, deposited_cents } = facts;
  const money = (cents: number) => formatMoney(cents, decimalMark);
  const rate = `${formatTaxRate(facts.taxPerHundredThousand, decimalMark)} %`;
  const sums: ReadonlyArray<readonly [string, number, boolean]> = [
    ['Lines', totals.lines_cents, false],
    [`${facts.taxLabel} ${rate} on ${money(totals.taxable_cents)}`, totals.tax_cents, false],
    ['Total', totals.total_cents, true],
    ...(deposited_cents === 0
      ? []
      : ([
          ['Received ahead', -deposited_cents, false],
          ['Balance', totals.total_cents - deposited_cents, true],
        ] as const)),
  ];
  return {
    kind: 'together',
    left: null,
    blocks: [
      {
        kind: 'table',
        columns: [column('', 'start', 'rest'), column('', 'decimal', 64)],
        rows: sums.map(([name, cents, isStrong]) => ({
          kind: 'row',
          cells: [words(name, isStrong), words(money(cents), isStrong)],
        })),
      },
      { kind: 'paragraph', words: [{ text: roundingWords, quiet: true }], small: true },
    ],
  };
}

function changes({ changes: since, decimalMark, taxLabel }: EstimateFacts): readonly Block[] {
  if (since === null) return [];
  const money = (cents: number | null) => (cents === null ? '–' : formatMoney(cents, decimalMark));
  const signed = (cents: number) => `${cents > 0 ? '+' : ''}${money(cents)}`;
  const row = (name: string, was: string, is: string, difference: number, isStrong = false): Row => ({
    kind: 'row',
    cells: [words(name, isStrong), words(was), words(is), words(signed(difference), isStrong)],
  });
  const heading: Block = { kind: 'heading', text: `Changed since estimate ${since.sinceNumber} was approved` };
  if (since.lines.length === 0 && since.total_difference_cents === 0) {
    return [heading, { kind: 'paragraph', words: [{ text: 'Nothing that is charged for.' }] }];
  }
  return [
    heading,
    {
      kind: 'table',
      columns: [
        column('', 'start', 'rest'),
        column('was', 'decimal', 'content'),
        column('is now', 'decimal', 'content'),
        column('difference', 'decimal', 64),
      ],
      rows: [
        ...since.lines.map((each) =>
          row(each.description, money(each.was_cents), money(each.is_cents), each.difference_cents),
        ),
        row(taxLabel, '', '', since.tax_difference_cents),
        row('Total', '', '', since.total_difference_cents, true),
      ],
    },
  ];
}

function agreed({ approvals, decimalMark }: EstimateFacts): readonly Block[] {
  return approvals.map((approval) => {
    const said = approvalWords(approval, decimalMark);
    const text = `${said.charAt(0).toUpperCase()}${said.slice(1)}; written down by ${approval.by}.`;
    return { kind: 'paragraph', words: [{ text, strong: true }] };
  });
}

/** Lines to sign on, as long as nobody has said yes. */
function toSign({ approvals }: EstimateFacts): readonly Block[] {
  const notes = [
    [{ text: 'Work beyond the approved amount is not begun before it is approved anew.', quiet: true }],
  ] as const;
  if (approvals.length > 0) return [{ kind: 'paragraph', words: notes[0], small: true }];
  return [{ kind: 'closing', versions: [], notes, signatures: ['Approved, name and day', 'Up to'] }];
}

function words(text: string, strong = false): Cell {
  return { kind: 'words', words: [{ text, strong }] };
}

function column(heading: string, align: Column['align'], width: Column['width']): Column {
  return { heading, align, width };
}
