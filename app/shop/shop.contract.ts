// The shop itself: which file is open, who works here, and the settings every reading leans on.
import { z } from 'zod';
import { done, id, length_nm, line, nothing, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';
import { exportContract } from './export.contract.ts';
import { findContract } from './find.contract.ts';

export const person = z.strictObject({
  personId: id,
  initials: requiredLine,
  name: requiredLine,
  isRetired: z.boolean(),
});

export const settings = z.strictObject({
  shopName: requiredLine,
  lengthUnit: z.enum(['thou', 'mm']),
  decimalMark: z.enum(['.', ',']),
  paper: z.enum(['letter', 'A4']),
  warranty: line.describe('the line at the foot of the build report'),
  /** What this shop usually stands in for, whichever comes first; each may be left out. */
  warrantyMonths: z.int().positive().max(240).nullable(),
  warrantyDistance: z.int().positive().max(10_000_000).nullable(),
  warrantyDistanceUnit: z.enum(['miles', 'km']),
  warrantyPasses: z.int().positive().max(100_000).nullable(),
  /** Not back to zero by more than this: the spot is done again. */
  zeroReturnLimit_nm: length_nm.positive(),
  /** Two reads of one spot that differ by more ask for a third. */
  repeatLimit_nm: length_nm.positive(),
  /** More than this from the tightest spot to the loosest is uneven; a spot this far from the others is asked again. */
  unevenLimit_nm: length_nm.positive(),
  /** How well this shop repeats one reading, one standard deviation: by air, by dial, by micrometer; what that rests on. */
  repeatability_nm: length_nm.positive(),
  dialRepeatability_nm: length_nm.positive(),
  directRepeatability_nm: length_nm.positive(),
  repeatabilityDegreesOfFreedom: z.int().positive(),
  handForceHalfWidth_nm: length_nm.nonnegative(),
  baseOnPumpHalfWidth_nm: length_nm.nonnegative(),
  dialResolution_nm: length_nm.positive(),
  /** How much a pack reads differently after it was taken apart and put back, one standard deviation. */
  restack_nm: length_nm.nonnegative(),
  micrometerUncertainty_nm: length_nm.positive(),
  /** simple: inside the limits is in. guarded: inside by more than the expanded uncertainty. */
  decisionRule: z.enum(['simple', 'guarded']),
});

export const shopState = z.discriminatedUnion('open', [
  z.strictObject({
    open: z.literal(false),
    folder: z.string(),
    hasShopFile: z.boolean(),
    /** Why the shop file that is here could not be opened; null: it was not tried, or there is none. */
    trouble: z.strictObject({ code: z.string(), message: z.string(), file: z.string() }).nullable(),
  }),
  z.strictObject({
    open: z.literal(true),
    folder: z.string(),
    file: z.string(),
    hasShopFile: z.boolean(),
    isDemo: z.boolean(),
    settings,
    people: z.array(person),
  }),
]);

export const shopContract = {
  ...exportContract,
  ...findContract,
  'shop.getShop': read('what is open: the shop, its people and settings', nothing, shopState),
  'shop.createShop': write(
    'start an empty shop file with its first person',
    z.strictObject({
      shopName: requiredLine,
      lengthUnit: z.enum(['thou', 'mm']),
      paper: z.enum(['letter', 'A4']),
      personName: requiredLine,
      personInitials: requiredLine.max(4),
    }),
    done,
  ),
  'shop.openDemoShop': write('open the demo shop, a file of its own', nothing, done),
  'shop.openOwnShop': write('leave the demo and open the shop file', nothing, done),
  'shop.changeSettings': write('change what the shop has set', settings.partial(), done),
  'shop.addPerson': write(
    'add somebody who works here',
    z.strictObject({ name: requiredLine, initials: requiredLine.max(4) }),
    z.strictObject({ personId: id }),
  ),
  'shop.retirePerson': write(
    'somebody no longer works here; what they did stays',
    z.strictObject({ personId: id }),
    done,
  ),
} as const;

export type ShopState = z.infer<typeof shopState>;
export type Settings = z.infer<typeof settings>;
export type Person = z.infer<typeof person>;
