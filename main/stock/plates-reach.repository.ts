// Which tickets had a pack of one name in units of one family, over all revisions of its sheet.
import type { Reading } from '../database/tables.ts';

export function findPackOfFamily(reading: Reading, packId: number) {
  return reading
    .selectFrom('packs')
    .innerJoin('revisions', 'revisions.revision_id', 'packs.revision_id')
    .innerJoin('families', 'families.family_id', 'revisions.family_id')
    .select(['packs.name', 'packs.revision_id', 'families.family_id', 'families.name as family_name'])
    .where('packs.pack_id', '=', packId)
    .executeTakeFirst();
}

/** The newest tickets in which somebody wrote down what sat in this pack. */
export function newestPacksNamed(reading: Reading, pack: { familyId: number; name: string; limit: number }) {
  return reading
    .selectFrom('jobs')
    .innerJoin('revisions', 'revisions.revision_id', 'jobs.revision_id')
    .innerJoin('packs', 'packs.revision_id', 'jobs.revision_id')
    .select([
      'jobs.job_id as jobId',
      'jobs.number as jobNumber',
      'jobs.revision_id as revisionId',
      'packs.pack_id as packId',
    ])
    .where('revisions.family_id', '=', pack.familyId)
    .where('packs.name', '=', pack.name)
    .where((row) =>
      row.exists(
        row
          .selectFrom('mock_ups')
          .whereRef('mock_ups.job_id', '=', 'jobs.job_id')
          .whereRef('mock_ups.pack_id', '=', 'packs.pack_id')
          .select('mock_up_id'),
      ),
    )
    .orderBy('jobs.number', 'desc')
    .limit(pack.limit)
    .execute();
}
