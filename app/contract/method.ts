// One method of the contract: whether it reads or writes, and the shapes of what goes in and what comes back.
import type { z } from 'zod';

export type Method<I extends z.ZodType = z.ZodType, O extends z.ZodType = z.ZodType> = {
  readonly kind: 'read' | 'write';
  /** One line for a person who asks from a shell. */
  readonly says: string;
  readonly input: I;
  readonly output: O;
};

export function read<I extends z.ZodType, O extends z.ZodType>(says: string, input: I, output: O) {
  return { kind: 'read', says, input, output } as const satisfies Method<I, O>;
}

export function write<I extends z.ZodType, O extends z.ZodType>(says: string, input: I, output: O) {
  return { kind: 'write', says, input, output } as const satisfies Method<I, O>;
}
