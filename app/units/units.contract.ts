// The transmission itself: its family, serial, vehicle and use.
import { z } from 'zod';
import { id, line, requiredLine } from '../contract/fields.ts';
import { read } from '../contract/method.ts';

export const uses = ['street', 'tow', 'competition'] as const;

export const unit = z.strictObject({
  unitId: id,
  familyId: id,
  familyName: requiredLine,
  serial: line,
  vehicle: line,
  use: z.enum(uses),
});

export const unitsContract = {
  'units.findUnits': read(
    'units whose serial, vehicle or family holds this text, newest first',
    z.strictObject({ text: line }),
    z.array(unit.extend({ visits: z.int().nonnegative() })),
  ),
} as const;

export type Unit = z.infer<typeof unit>;
export type Use = (typeof uses)[number];
