// What this program is: its version, what it runs on, what it is made of, and what went wrong in it.
import { z } from 'zod';
import { nothing } from '../contract/fields.ts';
import { read } from '../contract/method.ts';

const part = z.strictObject({
  name: z.string(),
  version: z.string(),
  licence: z.string().describe('as SPDX writes it'),
});

export const aboutContract = {
  'about.getAbout': read(
    'the version that runs, what it runs on, the parts it is built of with their licences, and its faults',
    nothing,
    z.strictObject({
      version: z.string(),
      runsOn: z.string(),
      folder: z.string().describe('where the shop file, its photos and backups lie'),
      faultLog: z.strictObject({ file: z.string(), faults: z.int().nonnegative() }),
      parts: z.array(part).describe('empty where the program runs from its source, not built'),
    }),
  ),
  'about.getLicence': read(
    'the whole licence of one part',
    z.strictObject({ name: z.string(), version: z.string() }),
    z.strictObject({ text: z.string() }),
  ),
  'about.writeDiagnostics': read(
    'write what a helper needs to know of this machine and file, without a name or a number of the shop, beside the shop file',
    nothing,
    z.strictObject({ file: z.string() }),
  ),
} as const;

export type Part = z.infer<typeof part>;
