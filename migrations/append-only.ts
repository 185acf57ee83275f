// What is written once stays: triggers refuse any change or removal. INSERT OR REPLACE removes first, so
// `recursive_triggers` must be on for it to meet them; the database is never opened without it.

export function appendOnly(table: string): string[] {
  return ['update', 'delete'].map(
    (act) => `create trigger ${table}_no_${act} before ${act} on ${table}
begin select raise(abort, 'append-only: ${table}'); end`,
  );
}
