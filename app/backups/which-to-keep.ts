// Which backups stay when a new one is made: enough of the last days to undo a mistake, enough of the past to find it.

export type BackupInFolder = {
  readonly name: string;
  /** The instant it was made, UTC text. */
  readonly at: string;
  /** The shop's day it was made on, yyyy-mm-dd. */
  readonly day: string;
  /** Made before the file was brought up to date, or by hand into a folder of one's own: never thrown away. */
  readonly isPinned: boolean;
};

const spans: ReadonlyArray<readonly [most: number, of: (day: string) => string]> = [
  [7, (day) => day],
  [4, mondayOf],
  [12, (day) => day.slice(0, 7)],
];

/**
 * Every backup of today, the newest of each of the last 7 days, 4 weeks and 12 months that have one, and every pinned
 * one. Days without a backup do not count, so a shop that stood still for a month loses nothing. A backup of a later day
 * than today was made while the clock went wrong, or goes wrong now: it stays, and takes no other's place.
 */
export function backupsToKeep(backups: readonly BackupInFolder[], today: string): Set<string> {
  const newestFirst = backups.filter(({ day }) => day <= today).toSorted((one, other) => (one.at < other.at ? 1 : -1));
  const kept = new Set(backups.filter((each) => each.isPinned || each.day >= today).map((each) => each.name));
  for (const [most, spanOf] of spans) {
    const newestOfSpan = new Map<string, string>();
    for (const each of newestFirst) {
      const span = spanOf(each.day);
      if (!newestOfSpan.has(span)) newestOfSpan.set(span, each.name);
    }
    for (const name of [...newestOfSpan.values()].slice(0, most)) kept.add(name);
  }
  return kept;
}

function mondayOf(day: string): string {
  const date = new Date(Date.parse(day));
  date.setUTCDate(date.getUTCDate() - ((date.getUTCDay() + 6) % 7));
  return date.toISOString().slice(0, 10);
}
