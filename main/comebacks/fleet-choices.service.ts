// What a question about the fleet can be narrowed by.
import type { Reading } from '../database/tables.ts';
import * as repository from './fleet.repository.ts';
import { batchName } from './fleet-rows.service.ts';

/** The families with delivered builds, and of one of them what its builds differ by. */
export async function fleetChoices(reading: Reading, { familyId }: { familyId: number | null }) {
  const families = await repository.countBuildsByFamily(reading);
  if (familyId === null) return { families, revisions: [], packs: [], builders: [], batches: [] };
  const batches = new Map((await repository.listBatches(reading)).map((row) => [row.batch_id, row]));
  const counted = new Map<number, number>();
  for (const { batch_id } of await repository.listBatchesOfJobs(reading, familyId))
    counted.set(batch_id, (counted.get(batch_id) ?? 0) + 1);
  return {
    families,
    revisions: await repository.revisionsWithBuilds(reading, familyId),
    packs: await repository.packNames(reading, familyId),
    builders: await repository.buildersOf(reading, familyId),
    batches: [...counted].flatMap(([id, builds]) => {
      const batch = batches.get(id);
      return batch ? [{ id, name: `${batch.number}, ${batchName(batch)}`, builds }] : [];
    }),
  };
}
