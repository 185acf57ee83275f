// What the book would have on record of a planted shop, column by column, without a file: so that hundreds of shops can
// be asked.
import type { FleetBuild, FleetRows, GroupColumn, LaterVisit, NumberColumn } from '../../app/comebacks/fleet-rows.ts';
import { whatACheckTells } from '../../app/comebacks/what-a-check-tells.ts';
import { writeDay } from '../../app/papers/dates.ts';
import { standingTake } from '../../app/readings/standing-take.ts';
import { valueOfReading } from '../../app/readings/typed-line.ts';
import { startingSettings } from '../../app/shop/starting-settings.ts';
import type { Check } from '../../app/specs/spec-sheet.ts';
import { meanOf } from '../../app/statistics/summary.ts';
import { familiesOf, type Planting, plant } from '../../main/shop/demo/history/plant.ts';
import type { PlantedTake, PlantedTicket } from '../../main/shop/demo/history/planted-ticket.ts';
import { LineReader } from '../../main/shop/demo/history/written-reading.ts';

const settings = startingSettings({ shopName: 'Harrow Lane', lengthUnit: 'thou', paper: 'letter' });
export const handsOfHistory = ['RA', 'JH', 'MT'] as const;

/** Of the first family, on the last day of the history. Jobs are the keys of their tickets, people their hands. */
export function plantedRows(planting: Planting): FleetRows {
  const [family] = familiesOf(planting.families);
  if (!family) throw new Error('no family');
  const tickets = [...plant(planting)].map(({ ticket }) => ticket).filter(({ family: name }) => name === family.name);
  const lines = new LineReader(settings);
  const standing = tickets.map(
    (ticket) => new Map(family.sheet.checks.map((check) => [check.name, standingOf(ticket, check)])),
  );
  const ofUnit = Map.groupBy(tickets, ({ unit }) => unit.key);
  const choices = family.sheet.lists.flatMap((list) =>
    list.lines.flatMap(({ words, asks }) => (asks.kind === 'choice' ? [{ list: list.name, words }] : [])),
  );
  const parts = new Set(tickets.flatMap(({ pulls }) => pulls.map(({ batch }) => batch.part.number)));
  const group = (
    name: string,
    grouping: GroupColumn['grouping'],
    levelOf: (ticket: PlantedTicket, place: number) => string | null | undefined,
    packName: string | null = null,
  ): GroupColumn => ({
    kind: 'group',
    name,
    packName,
    grouping,
    levels: tickets.map((ticket, place) => {
      const level = levelOf(ticket, place);
      return level === null || level === undefined ? null : [level];
    }),
  });
  const clearances = family.packs.map(({ clearance }) => clearance);
  const columns = [
    ...family.sheet.checks
      .filter(({ limits }) => limits.kind !== 'variants')
      .map(
        (check): NumberColumn => ({
          kind: 'number',
          name: check.name,
          packName: check.packName,
          unit: check.unit,
          tells: whatACheckTells(check),
          values: standing.map((takes) => meanRead(lines, check, takes.get(check.name))),
        }),
      ),
    // Whatever is taken over in this history was only tried where it lay before.
    ...family.packs.map(
      ({ pack }): NumberColumn => ({
        kind: 'number',
        name: `Reused plates, ${pack.name}`,
        packName: pack.name,
        unit: '',
        tells: 'reused plates',
        values: tickets.map(({ mockUps }) => (mockUps.some((each) => each.pack === pack.name) ? 0 : null)),
      }),
    ),
    ...clearances.map(({ name, packName }) =>
      group(`${name} read by`, 'method', (_, place) => standing[place]?.get(name)?.method, packName),
    ),
    ...clearances.map(({ name, packName }) =>
      group(`${name}, plates`, 'plates', (_, place) => standing[place]?.get(name)?.setup?.plates, packName),
    ),
    group('Built by', 'builder', ({ takes }) => {
      const final = takes.find(({ phase }) => phase === 'final');
      return final && handsOfHistory[final.hand];
    }),
    group('Use', 'use', ({ unit }) => unit.use),
    group('Installed by', 'installer', () => null),
    ...[...parts].map((number) =>
      group(`Batch of ${number}`, 'batch', ({ pulls }) => {
        const batch = pulls.find(({ batch: { part } }) => part.number === number)?.batch;
        return batch && `${batch.mark} of ${writeDay(batch.receivedOn)}`;
      }),
    ),
    ...choices.map(({ list, words }) =>
      group(words, 'choice', ({ answers }) => {
        const given = answers.find((each) => each.list === list && each.words === words)?.answer;
        return given?.kind === 'chosen' ? given.option : null;
      }),
    ),
  ];
  return {
    today: planting.until,
    builds: tickets.map((ticket): FleetBuild => {
      const { delivery, takes } = ticket;
      return {
        jobId: ticket.key,
        revisionNumber: 1,
        builderId: takes.find(({ phase }) => phase === 'final')?.hand ?? null,
        batchIds: [],
        deliveredOn: delivery.on,
        distanceAtDelivery: delivery.distance,
        inServiceOn: delivery.inServiceOn,
        months: delivery.months,
        laterVisits: visitsAfter(ticket, ofUnit.get(ticket.unit.key) ?? []),
      };
    }),
    columns: columns.filter(
      (column) =>
        column.name === 'Installed by' ||
        (column.kind === 'number' ? column.values : column.levels).some((value) => value !== null),
    ),
    words: settings,
  };
}

function standingOf({ takes }: PlantedTicket, check: Check): PlantedTake | undefined {
  const ofCheck = takes.filter((take) => take.check === check.name).map((take) => ({ ...take, notes: [] }));
  return standingTake(ofCheck, check);
}

/** The mean of the spots, each the mean of its lines that were not put right. */
function meanRead(lines: LineReader, check: Check, take: PlantedTake | undefined): number | null {
  if (!take) return null;
  const putRight = new Set(take.readings.map(({ puts }) => puts?.right));
  const spots = Map.groupBy(
    take.readings.filter((_, index) => !putRight.has(index)),
    ({ spot }) => spot,
  );
  return meanOf(
    [...spots.values()].map((reads) =>
      meanOf(reads.map(({ typed }) => valueOfReading(lines.read(check, take, typed)) ?? Number.NaN)),
    ),
  );
}

function visitsAfter(build: PlantedTicket, ofUnit: readonly PlantedTicket[]): LaterVisit[] {
  return ofUnit
    .filter(({ key }) => key > build.key)
    .map(({ comeback, opened, distance }) => ({
      day: comeback?.cameBackOn ?? opened.at.slice(0, 10),
      distance,
      comeback: comeback && {
        outcome: comeback.outcome,
        causes: comeback.causes.map(({ cause, certainty, pack }) => ({ cause, certainty, packName: pack })),
      },
    }));
}
