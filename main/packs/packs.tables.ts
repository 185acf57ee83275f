// The rows of the packs room: what sat in which slot at each mock-up.
import type { Generated } from 'kysely';

export interface MockUpsTable {
  mock_up_id: Generated<number>;
  job_id: number;
  pack_id: number;
  number: number;
  note: string;
  predicted_mean_nm: number | null;
  predicted_standard_deviation_nm: number | null;
  made_at: string;
  made_by: number;
}

export interface MockUpPiecesTable {
  mock_up_id: number;
  slot_id: number;
  piece_id: number;
}

export type PacksTables = { mock_ups: MockUpsTable; mock_up_pieces: MockUpPiecesTable };
