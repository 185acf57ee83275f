// Which backups stay: seven days, four weeks, twelve months, and what was pinned.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type BackupInFolder, backupsToKeep } from '../../app/backups/which-to-keep.ts';

const on = (day: string, isPinned = false): BackupInFolder => ({
  name: day,
  at: `${day}T08:00:00.000Z`,
  day,
  isPinned,
});

test('a backup every day for two years leaves seven days, then weeks, then months', () => {
  const days = Array.from({ length: 731 }, (_, index) =>
    new Date(Date.UTC(2024, 10, 25) + index * 86_400_000).toISOString().slice(0, 10),
  );
  expect(days.at(-1)).toBe('2026-11-25');
  // By the calendar of November 2026: the 25th is a Wednesday, the 22nd, 15th and 8th are Sundays.
  const week = ['2026-11-19', '2026-11-20', '2026-11-21', '2026-11-22', '2026-11-23', '2026-11-24', '2026-11-25'];
  const weeks = ['2026-11-08', '2026-11-15'];
  const months = [
    '2025-12-31',
    '2026-01-31',
    '2026-02-28',
    '2026-03-31',
    '2026-04-30',
    '2026-05-31',
    '2026-06-30',
    '2026-07-31',
    '2026-08-31',
    '2026-09-30',
    '2026-10-31',
  ];
  expect(
    [
      ...backupsToKeep(
        days.map((day) => on(day)),
        '2026-11-25',
      ),
    ].toSorted(),
  ).toEqual([...months, ...weeks, ...week].toSorted());
});

test('a shop that stood still for months keeps what it has', () => {
  const backups = ['2026-01-05', '2026-01-06', '2026-06-01'].map((day) => on(day));
  expect(backupsToKeep(backups, '2026-06-01').size).toBe(3);
});

test('of the newest day all stay, of an earlier day the newest only', () => {
  const at = (day: string, hour: string) => ({ ...on(day), name: `${day} ${hour}`, at: `${day}T${hour}:00:00.000Z` });
  const backups = [at('2026-11-24', '08'), at('2026-11-24', '17'), at('2026-11-25', '08'), at('2026-11-25', '12')];
  expect([...backupsToKeep(backups, '2026-11-25')].toSorted()).toEqual([
    '2026-11-24 17',
    '2026-11-25 08',
    '2026-11-25 12',
  ]);
});

test('pinned backups and the newest always stay, never more than 23 others, whatever days there are', () => {
  const day = fc
    .integer({ min: 0, max: 4000 })
    .map((days) => new Date(Date.UTC(2015, 0, 1) + days * 86_400_000).toISOString().slice(0, 10));
  fc.assert(
    fc.property(
      fc.uniqueArray(day, { minLength: 1, maxLength: 200 }),
      fc.integer({ min: 2, max: 9 }),
      (days, every) => {
        const backups = days.map((each, index) => on(each, index % every === 0));
        const today = days.toSorted().at(-1) ?? '';
        const kept = backupsToKeep(backups, today);
        for (const each of backups.filter(({ isPinned }) => isPinned)) expect(kept).toContain(each.name);
        expect(kept).toContain(today);
        const unpinned = backups.filter(({ name, isPinned }) => !isPinned && kept.has(name));
        expect(unpinned.length).toBeLessThanOrEqual(7 + 4 + 12);
        // Thrown away or kept, asking again changes nothing.
        expect(
          backupsToKeep(
            backups.filter(({ name }) => kept.has(name)),
            today,
          ),
        ).toEqual(kept);
      },
    ),
  );
});

test('a clock that ran years ahead takes no place from the backups made before it and after it was put right', () => {
  const wild = ['2040-01-01', '2041-02-01', '2042-03-01'].map((day) => on(day));
  const sound = ['2026-11-20', '2026-11-24', '2026-11-25'].map((day) => on(day));
  expect(backupsToKeep([...wild, ...sound], '2026-11-25').size).toBe(6);
  const months = Array.from({ length: 14 }, (_, month) =>
    on(`20${41 + Math.floor(month / 12)}-${String((month % 12) + 1).padStart(2, '0')}-01`),
  );
  expect(backupsToKeep([...months, ...sound], '2026-11-25')).toContain('2026-11-25');
});
