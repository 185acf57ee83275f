// The build report: what was found, what was built and how sure that is, for the shop's folder or for the customer.
import { textWidth } from '../charts/text-box.ts';
import { lengthTable, otherTable, summary, unitOf } from './build-report-checks.ts';
import type { BuildReportFacts } from './build-report-facts.ts';
import { foundAtTeardown } from './build-report-findings.ts';
import { markedNotes, packCharts, packSections } from './build-report-packs.ts';
import { benchCautions, legend, limitsCaution } from './cautions.ts';
import { writeDay, writeDays } from './dates.ts';
import { answeredLists } from './lists-on-paper.ts';
import { pictureBlocks } from './marked-pictures.ts';
import { type Block, contentWidth, type Paper, textLines, type Words } from './paper.ts';

const demoWords = 'demo shop, everything invented';

/** The report as data, in its order; a painter only places it. */
export function buildReport(facts: BuildReportFacts): Paper {
  const { unit, jobNumber, shopName, isDemo } = facts;
  const footLeft = isDemo ? 'Thoubook, demo shop' : 'Thoubook';
  const warranty = warrantyText(facts);
  // The warranty stands at the foot of every page where it fits between its neighbours, else among the notes.
  const { size } = textLines.small;
  const isShort = textWidth(warranty, size) <= contentWidth(facts.paper) - 2 * textWidth(`${footLeft}   `, size);
  return {
    size: facts.paper,
    language: 'en',
    title: `Build report, job ${jobNumber}, ${copyName(facts)}`,
    author: shopName,
    subject: `${unit.family} for ${facts.customerName}`,
    madeAt: `${facts.printedOn}T12:00:00Z`,
    head: {
      left: `Build report, job ${jobNumber} · ${unit.family} · ${copyName(facts)}`,
      right: isDemo ? `${shopName} · ${demoWords}` : shopName,
    },
    foot: { left: footLeft, middle: isShort ? warranty : '' },
    blocks: [
      masthead(facts),
      who(facts),
      ...delivered(facts),
      summary(facts),
      ...lengthTable(facts),
      ...closing(facts, isShort ? '' : warranty),
      ...afterFirstPage(facts),
    ],
  };
}

function copyName({ copy }: BuildReportFacts): string {
  return copy === 'shop' ? 'shop’s copy' : 'customer’s copy';
}

function masthead(facts: BuildReportFacts): Block {
  return {
    kind: 'masthead',
    title: 'Build report',
    by: [{ text: facts.shopName }, ...(facts.isDemo ? [{ text: ` · ${demoWords}`, quiet: true }] : [])],
    right: [
      [{ text: `Job ${facts.jobNumber}`, strong: true }, { text: `, ${copyName(facts)}` }],
      [{ text: `for ${facts.customerName}` }],
      [{ text: writeDay(facts.printedOn), quiet: true }],
    ],
  };
}

function who(facts: BuildReportFacts): Block {
  const { unit, builtFrom, builtUntil } = facts;
  const join = (...parts: readonly string[]) => parts.filter((part) => part !== '').join(', ');
  const days = builtFrom === null || builtUntil === null ? '' : writeDays(builtFrom, builtUntil);
  const caseTag = unit.caseTag === '' ? '' : `case tag ${unit.caseTag}`;
  return {
    kind: 'facts',
    facts: [
      { name: 'Unit', value: join(`${unit.family} ${unit.serial}`.trim(), caseTag) },
      { name: 'Vehicle and use', value: join(unit.vehicle, unit.use, facts.distance) },
      { name: 'Came in with', value: facts.complaint === '' ? '–' : facts.complaint },
      { name: 'Built by', value: join(facts.builtBy, days) },
    ],
  };
}

/** What the customer keeps the paper for, once the unit has left. */
function delivered({ delivery }: BuildReportFacts): readonly Block[] {
  if (delivery === null) return [];
  return [
    {
      kind: 'facts',
      facts: [
        { name: 'Handed over', value: `${writeDay(delivery.on)}, to ${delivery.to}` },
        { name: 'Warranty', value: delivery.warranty },
      ],
    },
  ];
}

const notesWidth = 104;
const notesGap = 12;
/** Heights the packs are drawn in, so that they fill what the checks leave of the page. */
const packHeights = [260, 240, 220, 200, 185, 170, 155];

/** The packs to scale, what has to be said beside them, and the signatures. */
function closing(facts: BuildReportFacts, warranty: string): readonly Block[] {
  const width = contentWidth(facts.paper) - notesWidth - notesGap;
  const versions = packHeights.map((height) => packCharts(facts, width, height));
  const further = versions[0]!.slice(1);
  return [
    {
      kind: 'closing',
      versions: versions.map((rows) => rows[0] ?? []),
      notes: notes(facts, warranty),
      signatures: [`Signature for the build, ${facts.builtBy}`, 'Received'],
    },
    ...further.map((charts): Block => ({ kind: 'charts', charts })),
  ];
}

/** What matters to whoever takes the unit away stands first. */
function notes(facts: BuildReportFacts, warranty: string): readonly (readonly Words[])[] {
  const packs: readonly Words[] = [
    { text: 'Packs as built', strong: true },
    { text: `, piston at the bottom, heights to scale in ${facts.lengthUnit}.` },
  ];
  const quiet = (text: string): readonly Words[] => [{ text, quiet: true }];
  return [
    ...(facts.packs.length === 0 ? [] : [packs]),
    ...markedNotes(facts),
    ...facts.cautions.map(quiet),
    ...(warranty === '' ? [] : [quiet(warranty)]),
    quiet(limitsCaution(facts.unit.family, facts.specRevision)),
    quiet(legend),
  ];
}

function warrantyText({ warranty }: BuildReportFacts): string {
  return warranty === '' ? '' : `Warranty: ${warranty}`;
}

function afterFirstPage(facts: BuildReportFacts): readonly Block[] {
  const isShops = facts.copy === 'shop';
  const others = otherTable(facts);
  return [
    ...(others.length === 0 ? [] : [heading(otherHeading(facts)), ...others]),
    ...variants(facts),
    ...foundAtTeardown(facts),
    ...answeredLists(facts),
    ...packSections(facts),
    ...readAgain(facts),
    ...(isShops ? pictureBlocks(facts.onPictures, facts.paper) : []),
    ...(facts.photos.length > 0 ? [heading('Photos'), { kind: 'pictures', pictures: facts.photos } as const] : []),
    ...(isShops && facts.notes.length > 0
      ? [heading('Shop’s notes'), { kind: 'list', items: facts.notes } as const]
      : []),
    ...(isShops ? [heading('Cautions at the bench'), { kind: 'list', items: benchCautions } as const] : []),
  ];
}

function heading(text: string): Block {
  return { kind: 'heading', text };
}

/** "Line pressure, leak-down and torques": the groups that follow, by name. */
function otherHeading(facts: BuildReportFacts): string {
  const others = facts.checks.filter((check) => unitOf(check, facts) !== facts.lengthUnit);
  const [first = '', ...more] = [...new Set(others.map((check) => check.group))];
  if (more.length > 3) return 'Other checks';
  const names = [first, ...more.map((name) => name.charAt(0).toLowerCase() + name.slice(1))];
  return names.length === 1 ? first : `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;
}

/** What a reading decided between. */
function variants({ checks }: BuildReportFacts): readonly Block[] {
  const decided = checks.filter((check) => check.variantName !== null);
  if (decided.length === 0) return [];
  const items = decided.map((check) => `${check.name}: ${check.variantName}.`);
  return [heading('Decided by reading'), { kind: 'list', items }];
}

/** Every misread on the shop's copy; on the customer's how many there were. */
function readAgain({ superseded, copy }: BuildReportFacts): readonly Block[] {
  if (superseded.length === 0) return [];
  const count = superseded.length === 1 ? 'One reading was' : `${superseded.length} readings were`;
  if (copy === 'customer') {
    const text = `${count} misread and read again; the shop keeps both.`;
    return [heading('Read again'), { kind: 'paragraph', words: [{ text }] }];
  }
  const cell = (text: string) => ({ kind: 'words', words: [{ text }] }) as const;
  return [
    heading(`${count} misread and read again`),
    {
      kind: 'table',
      columns: [
        { heading: 'check', align: 'start', width: 'content' },
        { heading: 'typed', align: 'start', width: 'content' },
        { heading: 'put right', align: 'start', width: 'content' },
        { heading: 'why', align: 'start', width: 'rest' },
        { heading: 'by', align: 'start', width: 'content' },
      ],
      rows: superseded.map(({ check, typed, putRight, reason, by }) => ({
        kind: 'row',
        cells: [cell(check), cell(typed), cell(putRight), cell(reason), cell(by)],
      })),
    },
  ];
}
