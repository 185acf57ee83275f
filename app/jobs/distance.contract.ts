// How far a unit has gone: what stands on an odometer, or how many passes it has made.
import { z } from 'zod';

export const distanceUnits = ['miles', 'km', 'passes'] as const;
export const distance = z.strictObject({ amount: z.int().nonnegative().max(10_000_000), unit: z.enum(distanceUnits) });

export type Distance = z.infer<typeof distance>;
