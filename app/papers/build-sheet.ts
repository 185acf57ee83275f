// The build sheet: everything that was done on a job in the order it was done, for the folder.
import type { Diagnosis } from '../jobs/door.contract.ts';
import type { Act } from '../jobs/history.contract.ts';
import { writeDay } from './dates.ts';
import type { Block, Paper, PaperSize, Row, Words } from './paper.ts';

export type BuildSheetFacts = {
  readonly paper: PaperSize;
  readonly shopName: string;
  readonly isDemo: boolean;
  readonly jobNumber: number;
  /** yyyy-mm-dd, as are the days below. */
  readonly printedOn: string;
  readonly customerName: string;
  readonly unit: { readonly name: string; readonly vehicle: string; readonly caseTag: string };
  readonly complaint: string;
  readonly diagnosis: Diagnosis;
  readonly stageName: string;
  readonly promisedOn: string | null;
  /** In order, each with its day and time where the shop stands. */
  readonly acts: ReadonlyArray<Pick<Act, 'by' | 'says' | 'more'> & { readonly day: string; readonly time: string }>;
};

export function buildSheet(facts: BuildSheetFacts): Paper {
  const { jobNumber, shopName, isDemo, unit } = facts;
  return {
    size: facts.paper,
    language: 'en',
    title: `Build sheet, job ${jobNumber}`,
    author: shopName,
    subject: `${unit.name} for ${facts.customerName}`,
    madeAt: `${facts.printedOn}T12:00:00Z`,
    head: { left: `Build sheet, job ${jobNumber} · ${unit.name}`, right: shopName },
    foot: { left: isDemo ? 'Thoubook, demo shop' : 'Thoubook', middle: '' },
    blocks: [
      {
        kind: 'masthead',
        title: 'Build sheet',
        by: [{ text: shopName }, ...(isDemo ? [{ text: ' · demo shop, everything invented', quiet: true }] : [])],
        right: [
          [{ text: `Job ${jobNumber}`, strong: true }, { text: `, ${facts.stageName}` }],
          [{ text: `for ${facts.customerName}` }],
          [{ text: writeDay(facts.printedOn), quiet: true }],
        ],
      },
      {
        kind: 'facts',
        facts: [
          { name: 'Unit', value: unit.caseTag === '' ? unit.name : `${unit.name}, case tag ${unit.caseTag}` },
          { name: 'Vehicle and use', value: unit.vehicle },
          { name: 'Came in with', value: facts.complaint === '' ? '–' : facts.complaint },
          { name: 'Promised', value: facts.promisedOn === null ? '–' : writeDay(facts.promisedOn) },
        ],
      },
      ...seen(facts.diagnosis),
      { kind: 'heading', text: 'What was done' },
      {
        kind: 'table',
        columns: [
          { heading: 'time', align: 'start', width: 40 },
          { heading: 'what', align: 'start', width: 'rest' },
          { heading: 'by', align: 'start', width: 30 },
        ],
        rows: rowsByDay(facts),
      },
    ],
  };
}

function seen(diagnosis: Diagnosis): readonly Block[] {
  const looked = (name: string, words: string) =>
    words === '' || words === 'not looked at' ? [] : [`${name}: ${words}`];
  const facts = [
    ...looked('codes', diagnosis.codes),
    ...looked('fluid level', diagnosis.fluidLevel),
    ...looked('fluid colour', diagnosis.fluidColour),
    ...looked('smell', diagnosis.fluidSmell),
    ...looked('in the pan', diagnosis.pan),
    ...looked('installed by', diagnosis.installedBy),
    ...looked('changed in the vehicle', diagnosis.vehicleChanges),
  ];
  if (facts.length === 0) return [];
  return [
    { kind: 'heading', text: 'Seen at the door' },
    { kind: 'paragraph', words: [{ text: `${facts.join('; ')}.` }] },
  ];
}

function rowsByDay({ acts }: BuildSheetFacts): readonly Row[] {
  return [...Map.groupBy(acts, (act) => act.day)].flatMap(([day, ofDay]): readonly Row[] => [
    { kind: 'group', text: writeDay(day) },
    ...ofDay.map(({ time, says, more, by }): Row => {
      const words: readonly Words[] =
        more === '' ? [{ text: says }] : [{ text: says }, { text: `. ${more}`, quiet: true }];
      return {
        kind: 'row',
        cells: [
          { kind: 'words', words: [{ text: time, quiet: true }] },
          { kind: 'words', words },
          { kind: 'words', words: [{ text: by }] },
        ],
      };
    }),
  ]);
}
