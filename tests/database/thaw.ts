// A shop file of a released schema, as the program of then wrote it.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';

export const frozenFolder = join(import.meta.dirname, 'frozen');

/** Makes `file` the frozen shop of schema `number` ("0006"). */
export function thaw(number: string, file: string): void {
  const connection = new Sqlite(file);
  try {
    connection.pragma('foreign_keys = off');
    connection.exec(`begin; ${readFileSync(join(frozenFolder, `${number}.sql`), 'utf8')} commit`);
    if ((connection.pragma('foreign_key_check') as unknown[]).length > 0) throw new Error(`${number} points nowhere`);
  } finally {
    connection.close();
  }
}
