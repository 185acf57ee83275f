// Photos of a ticket: taken from a file, by paste, by drag, or from the folder a phone fills.
import { z } from 'zod';
import { done, id, instant, line } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';

export const photo = z.strictObject({
  photoId: id,
  caption: z.string(),
  /** The check it shows, if it shows one. */
  checkId: id.nullable(),
  isInReport: z.boolean(),
  width: z.int().positive(),
  height: z.int().positive(),
  at: instant,
  by: z.string(),
});

/** A JPEG, as base64; the window has turned it upright and made it small before. */
export const jpegBase64 = z.base64().min(4).max(3_000_000, 'is larger than this book keeps: make it smaller');

export const photosContract = {
  'photos.listPhotos': read('the photos of a ticket, oldest first', z.strictObject({ jobId: id }), z.array(photo)),
  'photos.getPhoto': read(
    'the picture itself, or its small one',
    z.strictObject({ photoId: id, size: z.enum(['full', 'small']) }),
    z.strictObject({ jpegBase64: z.string() }),
  ),
  'photos.addPhoto': write(
    'keep a photo with a ticket; the same picture twice is kept once',
    z.strictObject({
      jobId: id,
      caption: line,
      jpegBase64,
      smallBase64: jpegBase64,
      /** How it is remembered in the phone's folder, which then does not offer it again. */
      folderName: z.string().min(1).max(300).nullable(),
      by: id,
    }),
    z.strictObject({ photoId: id, isNew: z.boolean() }),
  ),
  'photos.describePhoto': write(
    'its caption, the check it shows, whether the report carries it',
    z.strictObject({ photoId: id, caption: line, checkId: id.nullable(), isInReport: z.boolean(), by: id }),
    done,
  ),
  'photos.removePhoto': write(
    'take a photo off the ticket; the file stays',
    z.strictObject({ photoId: id, by: id }),
    done,
  ),
  'photos.getFolder': read(
    'the folder a phone fills and what lies in it that is not kept yet, newest first',
    z.strictObject({}),
    z.strictObject({
      folder: z.string(),
      /** Why it cannot be looked into; empty where it can. */
      trouble: z.string(),
      files: z.array(
        z.strictObject({
          name: z.string(),
          bytes: z.int().nonnegative(),
          at: instant,
          /** How it is remembered once it is kept: a phone may use a name again. */
          folderName: z.string(),
        }),
      ),
    }),
  ),
  'photos.readFromFolder': read(
    'one file of that folder',
    z.strictObject({ name: z.string().min(1).max(255) }),
    z.strictObject({ base64: z.string() }),
  ),
  'photos.watchFolder': write(
    'look into this folder for new photos; empty: none',
    z.strictObject({ folder: z.string().trim().max(1000), by: id }),
    done,
  ),
} as const;

export type Photo = z.infer<typeof photo>;
