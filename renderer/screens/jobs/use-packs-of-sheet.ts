// The packs of the sheet a job is built by, slot by slot.
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import type { SavedPack } from '../../../app/specs/specs.contract.ts';
import { useRead } from '../../rpc/use-read.ts';

const none: readonly SavedPack[] = [];

export function usePacksOfSheet(job: Job): readonly SavedPack[] {
  const sheet = useRead('specs.getRevision', { familyId: job.unit.familyId, number: job.revisionNumber });
  return sheet.data?.packs ?? none;
}
