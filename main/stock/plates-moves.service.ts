// What happened last to the plates and cans of an outline, one line each.
import { formatLength } from '../../app/quantities/format-amount.ts';
import { faultsOf } from '../../app/stock/plate-words.ts';
import type { Reading } from '../database/tables.ts';
import { getSettings } from '../shop/shop.service.ts';
import { canReasons } from './cans.repository.ts';
import { lookOfRow } from './plates.repository.ts';
import * as repository from './plates-moves.repository.ts';

type PlateMove = { name: string; says: string; at: string; by: string };

export async function listPlateMoves(
  reading: Reading,
  { outline, limit }: { outline: string; limit: number },
): Promise<PlateMove[]> {
  const words = await getSettings(reading);
  const { lengthUnit, decimalMark } = words;
  const shown = (length_nm: number) => formatLength(length_nm, lengthUnit, undefined, decimalMark);
  const named = (plate: { tag: string; height_nm: number }) => plate.tag || shown(plate.height_nm);
  const move = (row: { at: string; by: string }, name: string, says: string): PlateMove => {
    return { name, says, at: row.at, by: row.by };
  };
  const heights = await repository.newestHeights(reading, outline, limit);
  const looks = await repository.newestLooks(reading, outline, limit);
  const discards = await repository.newestDiscards(reading, outline, limit);
  const returns = await repository.newestCanReturns(reading, outline, limit);
  const canMovements = await repository.newestCanMovements(reading, outline, limit);
  const fittings = await repository.newestFittings(reading, outline, limit);
  const removals = await repository.newestRemovals(reading, outline, limit);
  return [
    ...heights.map((row) => {
      const why = row.reason === '' ? '' : `: ${row.reason}`;
      return move(row, named(row), `${why === '' ? 'measured' : 'measured again'} ${row.typed}${why}`);
    }),
    ...looks.map((row) => {
      const look = lookOfRow(row);
      const faults = faultsOf(look, words);
      const seen = look.isUsable ? 'looked over, may be used' : 'not to be used';
      return move(row, named(row), faults === '' ? seen : `${seen}: ${faults}`);
    }),
    ...discards.map((row) =>
      move(row, named(row), row.was_mistyped ? 'taken back: mistyped' : `off the list: ${row.reason}`),
    ),
    ...returns.map((row) => move(row, named(row), `put among the others of can ${shown(row.can_nm)}`)),
    ...canMovements.map((row) => move(row, `can ${shown(row.height_nm)}`, canSays(row))),
    ...fittings.map((row) => move(row, named(row), `into ${row.pack_name} of job ${row.job_number}`)),
    ...removals.map((row) => move(row, named(row), `out of ${row.pack_name} of job ${row.job_number}`)),
  ]
    .toSorted((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0))
    .slice(0, limit);
}

function canSays(row: { change: number; reason: string; typed: string }): string {
  const change = row.change > 0 ? `+${row.change}` : `−${-row.change}`;
  const typed = row.reason === canReasons.measured && row.typed !== '' ? ` ${row.typed}` : '';
  return `${change}, ${row.reason}${typed}`;
}
