// The failures a call can end in, as errors that a query or a mutation carries to the screen.
import type { Failure } from '../../app/contract/reply.ts';
import { standingWords } from './standing.ts';

/** Expected: one plain sentence, shown where the person is. `field` names the part of the input it is about. */
export class Refused extends Error {
  readonly code: string;
  readonly field: string | null;

  constructor(code: string, message: string, field?: string) {
    super(message);
    this.name = 'Refused';
    this.code = code;
    this.field = field ?? null;
  }
}

/** A bug of ours; the log has more under `id`. */
export class Fault extends Error {
  readonly id: string;

  constructor(id: string, message: string) {
    super(message);
    this.name = 'Fault';
    this.id = id;
  }
}

/** The disk or the shop file. */
export class StorageFailed extends Error {
  readonly code: string;

  constructor(code: string, message: string) {
    super(message);
    this.name = 'StorageFailed';
    this.code = code;
  }
}

/** Nobody answered, so it is not known whether the call was carried out. */
export class Unanswered extends Error {
  constructor(cause: unknown) {
    super(standingWords.away, { cause });
    this.name = 'Unanswered';
  }
}

/** Somebody answered who does not know this window; nothing was carried out. */
export class ShutOut extends Error {
  constructor() {
    super(standingWords['shut out']);
    this.name = 'ShutOut';
  }
}

export function errorOf(failure: Failure): Error {
  switch (failure.kind) {
    case 'refusal':
      return new Refused(failure.code, failure.message, failure.field);
    case 'fault':
      return new Fault(failure.id, failure.message);
    case 'storage':
      return new StorageFailed(failure.code, failure.message);
  }
}

/** The sentence of a refusal about this field, for the field to show; null when it is about something else. */
export function refusalAbout(field: string, error: Error | null): string | null {
  return error instanceof Refused && error.field === field ? error.message : null;
}
