// Where a desk keeps its files when nobody says otherwise.
import { homedir } from 'node:os';
import { join } from 'node:path';

/** THOUBOOK_FOLDER, or the usual place for a program's files on this system. */
export function shopFolder(): string {
  const { THOUBOOK_FOLDER, XDG_DATA_HOME, APPDATA } = process.env;
  if (THOUBOOK_FOLDER) return THOUBOOK_FOLDER;
  if (process.platform === 'win32') return join(APPDATA ?? homedir(), 'Thoubook');
  if (process.platform === 'darwin') return join(homedir(), 'Library/Application Support/Thoubook');
  return join(XDG_DATA_HOME ?? join(homedir(), '.local/share'), 'thoubook');
}
