// What one computation of the calculator is, and how a text becomes its answer: parsed, checked, computed, checked again.
import { z } from 'zod';
import { accept, type Result, refuse } from '../../../../app/base/result.ts';
import { sayIssue } from './say-issue.ts';

export type Computation = {
  readonly name: string;
  /** One line. */
  readonly purpose: string;
  readonly input: z.ZodType;
  /** Each output with what it is and its unit. */
  readonly outputs: Readonly<Record<string, string>>;
  readonly formula: string;
  readonly source: string;
  readonly compute: (input: unknown) => Result<object>;
};

/** Ties a schema to the function that takes what the schema lets through. */
export function computation<Schema extends z.ZodType>(
  parts: Omit<Computation, 'input' | 'compute'> & {
    readonly input: Schema;
    readonly compute: (input: z.output<Schema>) => Result<object>;
  },
): Computation {
  return { ...parts, compute: (input) => parts.compute(input as z.output<Schema>) };
}

/** The answer to one JSON text. Whatever comes in, what comes out is an answer or a refusal. */
export function answer({ input, compute }: Computation, text: string): Result<object> {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return refuse(
      'not-json',
      text.trim() === '' ? 'There is no input: give one JSON object.' : 'The input is not JSON.',
    );
  }
  const parsed = input.safeParse(data);
  if (!parsed.success) return refuse('input', sayIssue(parsed.error, data));
  const result = compute(parsed.data);
  if (result.ok && !isAllFinite(result.value)) {
    return refuse('out-of-range', 'These numbers are too large or too small to compute with.');
  }
  return result;
}

function isAllFinite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object' || value === null) return true;
  return Object.values(value).every(isAllFinite);
}

/** A result by another shape. */
export function mapResult<T, U>(result: Result<T>, map: (value: T) => U): Result<U> {
  return result.ok ? accept(map(result.value)) : result;
}

/** null for what has no limit, since JSON has no infinity. */
export function nullIfEndless(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}

export const number = (what: string) => z.number().describe(what);
export const positive = (what: string) => z.number().positive().describe(what);
export const notNegative = (what: string) => z.number().nonnegative().describe(what);
export const probability = (what: string) => z.number().gt(0).lt(1).describe(what);
export const numbers = (what: string) => z.array(z.number()).describe(what);
/** JSON has no infinity, so it is written as a word. */
export const degreesOfFreedom = z
  .union([z.number().min(0.01), z.literal('infinity')])
  .transform((value) => (value === 'infinity' ? Number.POSITIVE_INFINITY : value))
  .describe('0.01 or more, real, or "infinity"');
/** What somebody calls a part, a person or a group. */
export const name = z.union([z.string(), z.number()]);
