// What came back, on paper. The shop's copy says what stands on record and what it speaks for; the customer's says what
// came back, what was found and what was done, without blame and without figures nobody asked for.
import type { Comeback } from '../comebacks/log.contract.ts';
import { decisionWords, doneWords, partWords, plainCondition } from '../jobs/finding-words.ts';
import { distanceWords } from '../jobs/warranty.ts';
import type { ComebackReportFacts } from './comeback-report-facts.ts';
import { tracedBlocks } from './comeback-report-trace.ts';
import { writeDay } from './dates.ts';
import type { Block, Cell, Paper, Words } from './paper.ts';

/** The report as data, in its order; a painter only places it. */
export function comebackReport(facts: ComebackReportFacts): Paper {
  const { comeback, shopName, isDemo, printedOn, copy } = facts;
  const { build, ticket } = comeback;
  const shop = isDemo ? `${shopName} · demo shop, everything invented` : shopName;
  const name = copy === 'shop' ? 'shop’s copy' : 'customer’s copy';
  const title = copy === 'shop' ? 'Comeback report' : 'What came back';
  return {
    size: facts.paper,
    language: 'en',
    title: `${title}, job ${ticket.number}, ${name}`,
    author: shopName,
    subject: `${build.unit.familyName} for ${build.customer.name}`,
    madeAt: `${printedOn}T12:00:00Z`,
    head: { left: `${title}, job ${ticket.number} · ${build.unit.familyName} · ${name}`, right: shop },
    foot: { left: isDemo ? 'Thoubook, demo shop' : 'Thoubook', middle: '' },
    blocks: [
      {
        kind: 'masthead',
        title,
        by: [{ text: shop }],
        right: [
          [{ text: `Job ${ticket.number}`, strong: true }, { text: `, ${name}` }],
          [{ text: `for ${build.customer.name}` }],
          [{ text: writeDay(printedOn), quiet: true }],
        ],
      },
      ...who(facts),
      ...(copy === 'shop' ? [...whatItWas(facts), ...tracedBlocks(facts)] : forCustomer(facts)),
    ],
  };
}

function who({ comeback, decimalMark, copy }: ComebackReportFacts): readonly Block[] {
  const { build, service, card } = comeback;
  const used = service.used === null ? '' : distanceWords(service.used, decimalMark);
  const ran = [service.days === 1 ? '1 day in service' : `${service.days} days in service`, used].filter(Boolean);
  const { unit } = build;
  return [
    {
      kind: 'facts',
      facts: [
        { name: 'Unit', value: `${unit.familyName} ${unit.serial}`.trim() },
        { name: 'Vehicle and use', value: [unit.vehicle, unit.use].filter(Boolean).join(', ') || '–' },
        { name: 'Left us', value: `${writeDay(build.deliveredOn)}, job ${build.number}` },
        { name: 'Came back', value: [writeDay(card.cameBackOn), ...(copy === 'shop' ? ran : [])].join(', ') },
      ],
    },
  ];
}

/** What the shop wrote down of it. */
function whatItWas({ comeback }: ComebackReportFacts): readonly Block[] {
  const { card, causes } = comeback;
  const said = causes.map(({ cause, packName, certainty, note }) =>
    [`${cause}, ${packName ?? 'whole unit'}: ${certainty}`, note].filter(Boolean).join(', '),
  );
  return [
    {
      kind: 'facts',
      facts: [
        { name: 'Customer says', value: card.customerSays || '–' },
        { name: 'Outcome', value: card.outcome },
        { name: 'Covered', value: [card.covered, card.coveredNote].filter(Boolean).join(': ') },
        { name: 'Causes said', value: said.join('; ') || 'none yet' },
      ],
    },
    ...(card.note === '' ? [] : [paragraph(card.note)]),
  ];
}

const coveredWords: Readonly<Record<Comeback['card']['covered'], string>> = {
  'not decided yet': 'Whether the warranty covers it is not decided yet.',
  'in warranty': 'The warranty covers it.',
  'out of goodwill': 'We cover it out of goodwill.',
  'not covered': 'The warranty does not cover it.',
};

function forCustomer({ comeback, findings }: ComebackReportFacts): readonly Block[] {
  const { card, ticket } = comeback;
  const cell = (text: string): Cell => ({ kind: 'words', words: [{ text }] });
  const isBack = ticket.deliveredOn !== null;
  return [
    { kind: 'heading', text: 'What you told us' },
    paragraph(card.customerSays || 'Nothing was written down.'),
    { kind: 'heading', text: isBack ? 'What we found and did' : 'What we found' },
    findings.length === 0
      ? paragraph('The unit is not looked at yet.')
      : {
          kind: 'table',
          columns: [
            { heading: 'part', align: 'start', width: 'rest' },
            { heading: 'found', align: 'start', width: 'content' },
            { heading: isBack ? 'what was done' : 'what is to be done', align: 'start', width: 'content' },
          ],
          rows: findings.map((finding) => ({
            kind: 'row',
            cells: [
              cell(partWords(finding)),
              cell(plainCondition[finding.condition]),
              cell((isBack ? doneWords : decisionWords)[finding.decision.decision]),
            ],
          })),
        },
    ...(card.outcome === 'no fault found' ? [paragraph('We found no fault.')] : []),
    { kind: 'heading', text: 'Warranty' },
    paragraph(coveredWords[card.covered]),
    ...(ticket.deliveredOn === null ? [] : [paragraph(`Handed over again on ${writeDay(ticket.deliveredOn)}.`)]),
  ];
}

function paragraph(text: string): Block {
  const words: readonly Words[] = [{ text }];
  return { kind: 'paragraph', words };
}
