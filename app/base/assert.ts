// For what only a bug can break. Bad input is a refusal (result.ts), never an assertion.

export function assert(condition: boolean, what: string): asserts condition {
  if (!condition) throw new Error(`broken promise: ${what}`);
}

/** The compiler proves that no case is left; reaching it at run time is a bug. */
export function assertNever(value: never): never {
  throw new Error(`unexpected case: ${String(value)}`);
}
