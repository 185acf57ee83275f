// A condition that one of many ids is meant, as one parameter: SQLite takes a list of any length, and the text of the
// statement stays the same.
import { type RawBuilder, sql } from 'kysely';

/** For `where('takes.take_id', 'in', among(takeIds))`. */
export function among(ids: readonly number[]): RawBuilder<number> {
  return sql<number>`(select value from json_each(${JSON.stringify(ids)}))`;
}
