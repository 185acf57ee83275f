// Leaving with everything: the whole shop as a folder of lists and photos that any other program can read.
import { z } from 'zod';
import { done, nothing } from '../contract/fields.ts';
import { read } from '../contract/method.ts';

/** The whole path of the folder the exported one is put into; empty: `exports`, beside the shop file. */
export const exportInto = z.string().trim().max(1000);
export const exported = z.strictObject({ folder: z.string() });

export const exportContract = {
  'shop.exportEverything': read(
    'everything in the book as a folder of CSV files, one a list; with the photos on wish',
    z.strictObject({ folder: exportInto, withPhotos: z.boolean() }),
    exported,
  ),
  'shop.getExport': read(
    'how far the export of everything is, while one runs',
    nothing,
    z.strictObject({ file: z.string(), written: z.int().nonnegative() }).nullable(),
  ),
  'shop.stopExport': read('stop the export of everything; nothing of it is kept', nothing, done),
} as const;
