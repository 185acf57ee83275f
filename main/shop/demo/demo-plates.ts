// Cans and single steels of the demo shop for a pack whose ring is what is swapped, so that its shelves look used and
// the swaps of the other packs stay as they are.
import type { Caller } from './kx3-job.ts';

const outline = 'KX3 low/reverse';

/** How many steels lie in the can of each height. */
const cans = [
  ['69.0', 4],
  ['69.5', 9],
  ['70.0', 12],
  ['70.5', 11],
  ['71.0', 7],
  ['71.5', 3],
  ['72.5', 2],
] as const;

/** Specials, selective and reused ones, tagged R01 and on in the order they were measured. */
const singles = [
  ['70.0', '66.5', '72.0', '68.5', '74.5', '70.5', '67.5', '69.5', '73.0', '69.0'],
  ['71.0', '71.5', '67.0', '70.0', '73.5', '70.5', '68.5', '69.5', '72.0', '68.0'],
  ['70.5', '70.0', '72.5', '69.0', '69.5 70.0 69.5', '71.0', '68.0', '71.5', '70.0', '70.5'],
].flat();

const unseen = { flat: 'not tried', offFlat: '', hasHotSpots: false, isGlazed: false, isConed: false, note: '' };

/** What was seen on a few of them, by tag. */
const looks = [
  ['R04', { ...unseen, flat: 'not flat', offFlat: '4', isUsable: false }],
  ['R11', { ...unseen, hasHotSpots: true, isUsable: false }],
  ['R18', { ...unseen, flat: 'flat', isGlazed: true, isUsable: true }],
  ['R23', { ...unseen, flat: 'not flat', offFlat: '6', isConed: true, isUsable: false }],
  ['R27', { ...unseen, flat: 'flat', isUsable: true }],
] as const;

/** Fills the cans, tags the single steels and looks a few of them over. */
export async function layOutOtherSteels(call: Caller, by: number): Promise<void> {
  for (const [typed, count] of cans) await call('stock.addCan', { kind: 'steel', outline, typed, count, by });
  const pieceIds = new Map<string, number>();
  for (const [index, typed] of singles.entries()) {
    const tag = `R${String(index + 1).padStart(2, '0')}`;
    const { pieceId } = await call('stock.addPiece', { kind: 'steel', outline, tag, typed, by });
    pieceIds.set(tag, pieceId);
  }
  for (const [tag, seen] of looks) {
    await call('stock.lookOverPlate', { pieceId: pieceIds.get(tag), ...seen, by });
  }
}
