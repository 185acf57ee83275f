// Copies of the shop file that outlive its disk: made by themselves, checked, kept for a year, known to restore.
import { z } from 'zod';
import { done, instant, nothing } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';

/** The whole path of a file or a folder on this machine. */
const path = z.string().trim().min(1, 'must not be empty').max(1000);

const backup = z.strictObject({
  file: z.string(),
  at: instant,
  /** Made before the file was brought up to date: never thrown away. */
  isPinned: z.boolean(),
  bytes: z.int().nonnegative(),
  jobs: z.int().nonnegative(),
  readings: z.int().nonnegative(),
});

const place = z.strictObject({
  folder: z.string(),
  /** When the newest backup that lies there was made; null: none lies there, or the place cannot be reached. */
  newestAt: instant.nullable(),
  isReachable: z.boolean(),
});

/** What a backup would bring back, found by bringing it back into a folder that is thrown away again. */
const rehearsed = z.strictObject({
  file: z.string(),
  at: instant.nullable().describe('null: a shop file without a card beside it'),
  jobs: z.int().nonnegative(),
  readings: z.int().nonnegative(),
  photos: z.int().nonnegative(),
  /** Photos the file names that lie neither beside the backup nor in this shop’s folder. */
  photosMissing: z.int().nonnegative(),
  newestReadingAt: instant.nullable(),
});

export const backupsContract = {
  'backups.getBackups': read(
    'every backup there is, newest first, the second place, and what went wrong last',
    nothing,
    z.strictObject({
      folder: z.string(),
      backups: z.array(backup),
      secondPlace: place.nullable(),
      /** Why the newest backup or its way to the second place failed; empty: it did not. */
      trouble: z.string(),
      /** What was restored or salvaged since the start, in words; empty: nothing. */
      broughtBack: z.string(),
    }),
  ),
  'backups.makeBackup': write(
    'copy the shop file, whole and checked, into the backup folder and the second place',
    nothing,
    z.strictObject({ file: z.string() }),
  ),
  'backups.chooseSecondPlace': write(
    'a folder elsewhere, such as a stick, that takes every backup too; null: none',
    z.strictObject({ folder: path.nullable() }),
    done,
  ),
  'backups.makeWholeBackup': write(
    'the shop file and all its photos as one file, in a folder',
    z.strictObject({ folder: path }),
    z.strictObject({ file: z.string(), bytes: z.int().nonnegative(), photos: z.int().nonnegative() }),
  ),
  'backups.rehearse': read(
    'bring a backup back into a folder that is thrown away again, and say what it holds',
    z.strictObject({ file: path }),
    rehearsed,
  ),
  'backups.restore': write(
    'put a backup, a whole backup or any shop file in place of the shop file; the old one is set aside',
    z.strictObject({ file: path }),
    rehearsed.extend({ setAside: z.string().nullable().describe('where the old file lies; null: there was none') }),
  ),
  'backups.salvage': write(
    'save what can be read of a damaged shop file, on top of the newest backup that is sound',
    nothing,
    z.strictObject({
      /** The backup it stands on; null: none was sound. */
      backup: z.string().nullable(),
      /** Rows read out of the damaged file that the backup did not hold. */
      rowsSaved: z.int().nonnegative(),
      /** Tables of which some rows could not be read. */
      tablesCutShort: z.array(z.string()),
      setAside: z.string(),
    }),
  ),
} as const;

export type Backups = z.infer<(typeof backupsContract)['backups.getBackups']['output']>;
export type Backup = Backups['backups'][number];
export type Rehearsed = z.infer<typeof rehearsed>;
