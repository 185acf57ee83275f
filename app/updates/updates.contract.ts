// A newer version of the program itself: where it is looked for, whether there is one, and how far it is.
import { z } from 'zod';
import { done, instant, nothing } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';

const offered = { version: z.string(), notes: z.string().describe('what its makers say of it, plain text') };

const updateStanding = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('no feed') }),
  z.strictObject({ kind: z.literal('looking') }),
  z.strictObject({ kind: z.literal('newest'), lookedAt: instant }),
  z.strictObject({ kind: z.literal('offered'), lookedAt: instant, ...offered }),
  z.strictObject({ kind: z.literal('fetching'), hundredths: z.int().min(0).max(100), ...offered }),
  /** Put in place when the window is closed. */
  z.strictObject({ kind: z.literal('fetched'), ...offered }),
  z.strictObject({ kind: z.literal('failed'), lookedAt: instant, why: z.string() }),
]);

const updates = z.strictObject({
  /** Of the program that runs. */
  version: z.string(),
  /** The address that is asked; null: none, and nothing is asked. */
  feed: z.string().nullable(),
  standing: updateStanding,
  /** Why the last version that was fetched was not put in place; empty: it was, or there was none. */
  keptBack: z.string(),
});

export const updatesContract = {
  'updates.getUpdates': read(
    'this version and what is known of a newer one; null where the program is not updated by itself',
    nothing,
    updates.nullable(),
  ),
  'updates.nameFeed': write(
    'the address that is asked for newer versions, once a day; empty: none',
    z.strictObject({ address: z.string().trim().max(1000) }),
    done,
  ),
  'updates.look': write('ask now whether there is a newer version', nothing, done),
  'updates.fetchVersion': write(
    'fetch the version that is offered; it is put in place when the window is closed, after a backup',
    z.strictObject({ version: z.string() }),
    done,
  ),
} as const;

export type Updates = z.infer<typeof updates>;
export type UpdateStanding = z.infer<typeof updateStanding>;
