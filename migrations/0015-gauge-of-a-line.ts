// Which gauge of the register speaks on a line.
import { type Kysely, sql } from 'kysely';

const statements = [
  // A setting as the line is one: a take writes down for itself which gauge read it.
  `create table line_gauges (
  gauge_line_id integer primary key references gauge_lines,
  gauge_id integer not null references gauges
) strict`,
  'pragma user_version = 15',
];

export async function up(database: Kysely<unknown>): Promise<void> {
  for (const statement of statements) await sql.raw(statement).execute(database);
}
