// A pack of a job with its mock-ups and what each of them read: what every question about a pack starts from.
import type { MockUpRecord } from '../../app/packs/pack-evidence.ts';
import type { MockUp, Piece } from '../../app/packs/packs.contract.ts';
import { mockUpRead } from '../../app/readings/mock-up-read.ts';
import type { Take } from '../../app/readings/readings.contract.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';
import type { SavedCheck, SavedPack } from '../../app/specs/specs.contract.ts';
import { found, Refused } from '../database/errors.ts';
import type { Reading } from '../database/tables.ts';
import { getJobRow } from '../jobs/jobs.service.ts';
import { listTakes } from '../readings/readings.service.ts';
import { getSettings } from '../shop/shop.service.ts';
import { listChecks } from '../specs/checks-of-sheets.repository.ts';
import { findPack } from '../specs/packs-of-sheets.repository.ts';
import * as repository from './packs.repository.ts';

export type MockUpAtHand = {
  readonly mockUpId: number;
  readonly number: number;
  readonly at: string;
  readonly by: string;
  readonly note: string;
  readonly predicted: MockUp['predicted'];
  readonly pieces: ReadonlyArray<{ slotId: number; piece: Piece }>;
  readonly take: Take | null;
};

export async function packAtHand(
  reading: Reading,
  input: { jobId: number; packId: number },
): Promise<{ pack: SavedPack; check: SavedCheck | undefined; settings: Settings; mockUps: MockUpAtHand[] }> {
  const job = await getJobRow(reading, input.jobId);
  const checks = await listChecks(reading, job.revision_id);
  const pack = found(await findPack(reading, input.packId), 'pack');
  const row = await reading
    .selectFrom('packs')
    .select('revision_id')
    .where('pack_id', '=', input.packId)
    .executeTakeFirst();
  if (row?.revision_id !== job.revision_id) throw new Refused('not-found', `Job ${job.number} has no such pack.`);
  const check = checks.find((each) => each.packId === input.packId);
  const takes = check ? await listTakes(reading, { jobId: input.jobId, checkId: check.checkId }) : [];
  // Only the way the spec means counts: feeler and air differ from pack to pack, so one cannot predict the other.
  const read = takes.filter((take) => take.method === check?.method && take.evaluation.mean !== null);
  const rows = await repository.listMockUps(reading, input.jobId, input.packId);
  const mockUps = await Promise.all(
    rows.map(async (mockUp) => ({
      mockUpId: mockUp.mock_up_id,
      number: mockUp.number,
      at: mockUp.made_at,
      by: mockUp.initials,
      note: mockUp.note,
      predicted:
        mockUp.predicted_mean_nm === null || mockUp.predicted_standard_deviation_nm === null
          ? null
          : { mean_nm: mockUp.predicted_mean_nm, standardDeviation_nm: mockUp.predicted_standard_deviation_nm },
      pieces: await repository.listMockUpPieces(reading, mockUp.mock_up_id),
      take: read.findLast((take) => mockUpRead(take) === mockUp.number) ?? null,
    })),
  );
  return { pack, check, settings: await getSettings(reading), mockUps };
}

export function readOf(take: Take): MockUp['read'] {
  const { mean, expanded, verdict } = take.evaluation;
  return mean === null ? null : { takeId: take.takeId, mean_nm: mean, expanded_nm: expanded, verdict };
}

export function recordOf(mockUp: MockUpAtHand): MockUpRecord {
  const evaluation = mockUp.take?.evaluation;
  const isUsable = evaluation && evaluation.mean !== null && evaluation.standardUncertainty !== null;
  return {
    pieces: mockUp.pieces.map(({ piece }) => piece),
    read: isUsable
      ? { mean_nm: evaluation.mean ?? 0, standardUncertainty_nm: evaluation.standardUncertainty ?? 0 }
      : null,
  };
}
