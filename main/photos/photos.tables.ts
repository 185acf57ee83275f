// The rows of the photos room.
import type { Generated } from 'kysely';

export interface PhotosTable {
  photo_id: Generated<number>;
  job_id: number;
  /** The file is named after this; so is its small one. */
  sha256: string;
  small_sha256: string;
  width: number;
  height: number;
  caption: string;
  check_id: number | null;
  is_in_report: 0 | 1;
  folder_name: string | null;
  added_at: string;
  added_by: number;
  removed_at: string | null;
}

export interface PhotoFolderTable {
  photo_folder_id: number;
  folder: string;
}

export type PhotosTables = { photos: PhotosTable; photo_folder: PhotoFolderTable };
