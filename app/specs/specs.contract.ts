// Families and their spec sheets. A sheet that a job has used is never edited: saving makes the next revision.
import { z } from 'zod';
import { id, instant, line, nothing, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';
import { jpegBase64 } from '../photos/photos.contract.ts';
import { smallJobsContract } from './small-jobs.contract.ts';
import { listLine, specList } from './spec-list.ts';
import { check, pack, picture, picturePoint, slot, specSheet } from './spec-sheet.ts';

export const savedSlot = slot.extend({ slotId: id });
export const savedPack = pack.extend({ packId: id, slots: z.array(savedSlot) });
export const savedCheck = check.extend({ checkId: id, packId: id.nullable() });
export const savedPicture = picture.extend({
  pictureId: id,
  points: z.array(picturePoint.extend({ checkId: id.nullable(), lineId: id.nullable() })),
});

export const savedLine = listLine.extend({ lineId: id });
export const savedList = specList.extend({ listId: id, packId: id.nullable(), lines: z.array(savedLine) });

export const revision = z.strictObject({
  revisionId: id,
  familyId: id,
  familyName: requiredLine,
  number: z.int().positive(),
  /** True once a job was checked in under it. */
  isFrozen: z.boolean(),
  sourceNote: line,
  savedAt: instant,
  savedBy: z.string(),
  packs: z.array(savedPack),
  checks: z.array(savedCheck),
  lists: z.array(savedList),
  pictures: z.array(savedPicture),
});

export const specsContract = {
  ...smallJobsContract,
  'specs.listFamilies': read(
    'the families with their newest revision',
    nothing,
    z.array(
      z.strictObject({
        familyId: id,
        name: requiredLine,
        revisionNumber: z.int().nonnegative(),
        isFrozen: z.boolean(),
        packs: z.int().nonnegative(),
        checks: z.int().nonnegative(),
        lists: z.int().nonnegative(),
        pictures: z.int().nonnegative(),
      }),
    ),
  ),
  'specs.getRevision': read(
    'a spec sheet: the newest of a family, or one revision by number',
    z.strictObject({ familyId: id, number: z.int().positive().optional() }),
    revision,
  ),
  'specs.addFamily': write(
    'add a family, with an empty spec sheet',
    z.strictObject({ name: requiredLine, by: id }),
    z.strictObject({ familyId: id }),
  ),
  'specs.saveSheet': write(
    'save a whole spec sheet: into the newest revision while no job uses it, else as the next',
    z.strictObject({ familyId: id, sheet: specSheet, sourceNote: line, by: id }),
    z.strictObject({ revisionId: id, number: z.int().positive() }),
  ),
  'specs.keepPicture': write(
    'keep the file of a picture, so that a sheet may carry it',
    z.strictObject({ of: z.union([z.strictObject({ jpegBase64 }), z.strictObject({ photoId: id })]), by: id }),
    picture.pick({ sha256: true, width: true, height: true }),
  ),
  'specs.getPicture': read(
    'the picture itself',
    picture.pick({ sha256: true }),
    z.strictObject({ jpegBase64: z.string() }),
  ),
} as const;

export type Revision = z.infer<typeof revision>;
export type SavedPack = z.infer<typeof savedPack>;
export type SavedSlot = z.infer<typeof savedSlot>;
export type SavedPicture = z.infer<typeof savedPicture>;
export type SavedCheck = z.infer<typeof savedCheck>;
export type SavedList = z.infer<typeof savedList>;
export type SavedLine = z.infer<typeof savedLine>;
