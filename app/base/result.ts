// An answer, or one plain sentence why there is none. A refusal is a value: nothing in `app` throws for bad input
// and nothing returns NaN or null for failure.

/** What a person is told when there is no answer: a stable code for programs, one plain sentence for people. */
export type Refusal = { readonly code: string; readonly message: string };

export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly refusal: Refusal };

export function accept<T>(value: T): Result<T> {
  return { ok: true, value };
}

export function refuse(code: string, message: string): { readonly ok: false; readonly refusal: Refusal } {
  return { ok: false, refusal: { code, message } };
}
