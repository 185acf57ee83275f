// Opening a Result in a test.
import { expect } from 'vitest';
import type { Result } from '../../app/base/result.ts';

/** The value; fails with the refusal's sentence where there is none. */
export function accepted<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`refused: ${result.refusal.message}`);
  return result.value;
}

/** Fails unless the result is a refusal with this code and a plain sentence. */
export function expectRefusal(result: Result<unknown>, code: string): void {
  expect(result).toMatchObject({ ok: false, refusal: { code, message: expect.stringMatching(/^.+\.$/s) } });
}
