// The first thing wrong with an input, in one plain sentence that names the field.
import type { z } from 'zod';

const wanted: Readonly<Record<string, string>> = {
  number: 'a number',
  int: 'a whole number',
  string: 'text',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object',
  tuple: 'a list',
};

export function sayIssue(error: z.ZodError, data: unknown): string {
  return say(error.issues[0]!, [], data);
}

function say(issue: z.core.$ZodIssue, within: readonly PropertyKey[], data: unknown): string {
  const path = [...within, ...issue.path];
  const field = path.length === 0 ? 'The input' : nameOf(path);
  const given = path.reduce<unknown>((inside, key) => (inside as Record<PropertyKey, unknown>)?.[key], data);
  if (issue.code === 'unrecognized_keys') return `${issue.keys.join(', ')} is not an input here.`;
  if (given === undefined) return `${field} is missing.`;
  if (issue.code === 'invalid_union' && issue.errors.length > 0) {
    const kinds = issue.errors.map((errors) => (errors.length === 1 ? kindWanted(errors[0]!) : null));
    if (kinds.every((kind) => kind !== null)) return `${field} must be ${[...new Set(kinds)].join(' or ')}.`;
    // The choice that came closest is the one that was meant.
    const [closest] = issue.errors.toSorted((a, b) => a.length - b.length);
    return say(closest![0]!, path, data);
  }
  const kind = kindWanted({ ...issue, path: [] });
  if (kind !== null) return `${field} must be ${kind}.`;
  const isLength = 'origin' in issue && (issue.origin === 'string' || issue.origin === 'array');
  if (issue.code === 'too_small' && isLength) return `${field} is too short.`;
  if (issue.code === 'too_big' && isLength) return `${field} is too long.`;
  if (issue.code === 'too_small') {
    return `${field} must be ${issue.inclusive ? `${issue.minimum} or more` : `more than ${issue.minimum}`}.`;
  }
  if (issue.code === 'too_big') {
    return `${field} must be ${issue.inclusive ? `${issue.maximum} or less` : `less than ${issue.maximum}`}.`;
  }
  if (issue.code === 'custom') return issue.message;
  return `${field} is not of a kind this takes; see --explain.`;
}

/** What should have stood there, if the issue is that something of another kind did; null for what is wrong inside it. */
function kindWanted(issue: z.core.$ZodIssue): string | null {
  if (issue.path.length > 0) return null;
  if (issue.code === 'invalid_type') return wanted[issue.expected] ?? issue.expected;
  if (issue.code === 'invalid_value') return oneOf(issue.values);
  if (issue.code === 'invalid_union' && 'options' in issue) return oneOf(issue.options ?? []);
  return null;
}

function oneOf(values: readonly unknown[]): string {
  return values.map((each) => JSON.stringify(each)).join(' or ');
}

function nameOf(path: readonly PropertyKey[]): string {
  return path
    .map((key, i) => (typeof key === 'number' ? `[${key}]` : i === 0 ? String(key) : `.${String(key)}`))
    .join('');
}
