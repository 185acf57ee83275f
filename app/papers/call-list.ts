// Whom to call, to be taken to the phone: thing by thing, with the contact, what to check, and room to write.
import { callStanding, cameBackWords, usedSoFar, warrantyToday } from '../comebacks/call-words.ts';
import type { UnitToCall } from '../comebacks/calls.contract.ts';
import type { DecimalMark } from '../quantities/format-amount.ts';
import { writeDay } from './dates.ts';
import type { Block, Cell, Column, Paper, PaperSize, Row } from './paper.ts';

export type CallListFacts = {
  readonly paper: PaperSize;
  readonly decimalMark: DecimalMark;
  readonly shopName: string;
  readonly isDemo: boolean;
  /** A business day. */
  readonly printedOn: string;
  /** Those still to be called. */
  readonly units: readonly UnitToCall[];
};

/** The list as data, in its order; a painter only places it. */
export function callList(facts: CallListFacts): Paper {
  const { shopName, isDemo, printedOn } = facts;
  const shop = isDemo ? `${shopName} · demo shop, everything invented` : shopName;
  return {
    size: facts.paper,
    language: 'en',
    title: `Whom to call, ${writeDay(printedOn)}`,
    author: shopName,
    subject: 'Units that share something with one that came back or was found out',
    madeAt: `${printedOn}T12:00:00Z`,
    head: { left: `Whom to call · ${writeDay(printedOn)}`, right: shop },
    foot: { left: isDemo ? 'Thoubook, demo shop' : 'Thoubook', middle: '' },
    blocks: [
      {
        kind: 'masthead',
        title: 'Whom to call',
        by: [{ text: shop }],
        right: [[{ text: writeDay(printedOn), quiet: true }]],
      },
      ...(facts.units.length === 0
        ? [{ kind: 'paragraph', words: [{ text: 'Nobody has to be called.' }] } as const]
        : [...Map.groupBy(facts.units, ({ what }) => what)].flatMap(([what, units]) => sharing(facts, what, units))),
    ],
  };
}

function sharing(facts: CallListFacts, what: string, units: readonly UnitToCall[]): Block[] {
  const reasons = [...new Set(units.map(({ reason }) => reason))];
  return [
    { kind: 'heading', text: what },
    { kind: 'paragraph', words: [{ text: reasons.join('; ') }] },
    { kind: 'table', columns, rows: units.map((unit) => row(facts, unit)) },
  ];
}

const columns: Column[] = [
  { heading: 'job', align: 'end', width: 'content' },
  { heading: 'customer', align: 'start', width: 'rest' },
  { heading: 'unit', align: 'start', width: 'rest' },
  { heading: 'in service', align: 'start', width: 'rest' },
  { heading: 'warranty', align: 'start', width: 'rest' },
  { heading: 'stands', align: 'start', width: 'content' },
];

function row({ printedOn, decimalMark }: CallListFacts, unit: UnitToCall): Row {
  const { build, whatToCheck, calls } = unit;
  const writing = { decimalMark, sayDay: writeDay };
  const contact = [build.customer.phone, build.customer.email].filter(Boolean).join(', ') || 'no phone number';
  const notes = [
    whatToCheck && `Check: ${whatToCheck}`,
    cameBackWords(build, writeDay),
    calls[0]?.note && `Last call: ${calls[0].note}`,
  ];
  const note = notes.filter(Boolean).join('. ');
  return {
    kind: 'row',
    cells: [
      words(String(build.number)),
      { kind: 'words', words: [{ text: build.customer.name, strong: true }, { text: `, ${contact}` }] },
      words([`${build.unit.familyName} ${build.unit.serial}`.trim(), build.unit.vehicle].filter(Boolean).join(', ')),
      words(`${build.service.days} days, ${usedSoFar(build, writing)}`),
      words(warrantyToday(build, printedOn, writing)),
      words(callStanding(unit)),
    ],
    ...(note !== '' && { note }),
  };
}

function words(text: string): Cell {
  return { kind: 'words', words: [{ text }] };
}
