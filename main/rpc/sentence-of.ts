// A schema's complaint as one plain sentence about the first thing that is wrong.
import type { z } from 'zod';

/** The sentence, and the dotted name of the field it is about ('' for the whole). */
export function sentenceOf(error: z.ZodError): { message: string; field: string } {
  const issue = deepest(error.issues[0]);
  if (!issue) return { message: 'What was sent does not fit.', field: '' };
  const field = issue.path.join('.');
  if (issue.code === 'unrecognized_keys') {
    return { message: `${quoted(issue.keys)} is not part of this call.`, field };
  }
  if (issue.message.endsWith('received undefined')) {
    return { message: field === '' ? 'The call came without its input.' : `${field} is missing.`, field };
  }
  const message = issue.message.replace(/^Invalid input: /, '');
  return { message: field === '' ? `The input does not fit: ${message}.` : `${field}: ${message}.`, field };
}

function quoted(keys: readonly string[]): string {
  return keys.map((key) => `“${key}”`).join(', ');
}

// A union reports one list of complaints per branch; the branch that got furthest is the one that was meant.
function deepest(issue: z.core.$ZodIssue | undefined): z.core.$ZodIssue | undefined {
  if (issue?.code !== 'invalid_union' || issue.errors.length === 0) return issue;
  const branch = issue.errors.toSorted((a, b) => a.length - b.length)[0]?.[0];
  return branch && deepest({ ...branch, path: [...issue.path, ...branch.path] });
}
