// Puts a history into an open shop: hands and families as people put them in, the old tickets in bulk, and what came of
// it counted on the way.
import type { OpenShop } from '../../../database/open-shop.ts';
import { nextNumber } from '../../../jobs/jobs.repository.ts';
import { listStages } from '../../../jobs/stages.repository.ts';
import { addFamily, getRevision, listFamilies, saveSheet } from '../../../specs/specs.service.ts';
import { getSettings } from '../../shop.service.ts';
import { FamilyOnFile } from './family-on-file.ts';
import { familiesOf, type Planted, type Planting, plant } from './plant.ts';
import { PlantedCounts } from './planted-counts.ts';
import { writeHistory } from './write-history.ts';

export type GrownHistory = {
  /** How many rows went into each table. */
  readonly rows: ReadonlyMap<string, number>;
  readonly counts: PlantedCounts;
};

/**
 * `people` are the three hands of the history, in order. A family that is on file keeps its sheet. `asWritten` may say
 * more of a ticket than was planted.
 */
export async function growHistory(
  shop: OpenShop,
  planting: Planting,
  people: readonly [number, number, number],
  asWritten: (planted: Planted) => Planted = (planted) => planted,
): Promise<GrownHistory> {
  const families = new Map<string, FamilyOnFile>();
  for (const { name, sheet } of familiesOf(planting.families)) {
    const known = (await shop.read(listFamilies)).find((family) => family.name === name);
    const familyId = known?.familyId ?? (await addWithSheet(shop, name, sheet, people[0]));
    families.set(name, new FamilyOnFile(await shop.read((reading) => getRevision(reading, { familyId }))));
  }
  const stages = await shop.read(listStages);
  const desk = {
    settings: await shop.read(getSettings),
    families,
    stages: new Map(stages.map(({ name, stageId }) => [name, stageId])),
    people,
    nextNumber: await shop.read(nextNumber),
  };
  const counts = new PlantedCounts();
  const rows = writeHistory(shop.file, altered(plant(planting), asWritten), desk, (planted) => counts.count(planted));
  return { rows, counts };
}

function* altered(history: Iterable<Planted>, asWritten: (planted: Planted) => Planted): Generator<Planted> {
  for (const planted of history) yield asWritten(planted);
}

async function addWithSheet(
  shop: OpenShop,
  name: string,
  sheet: Parameters<typeof saveSheet>[2]['sheet'],
  by: number,
): Promise<number> {
  return shop.write(async (writing, now) => {
    const { familyId } = await addFamily(writing, now, { name, by });
    await saveSheet(writing, now, { familyId, sheet, sourceNote: 'invented, for the demo', by }, () => false);
    return familyId;
  });
}
