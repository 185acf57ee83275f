// The acts on a typed sheet: add, change, move, take away. Each gives a new sheet.
import { unitNamed } from '../../../app/quantities/units.ts';
import type { PieceKind, ReadingMethod } from '../../../app/specs/spec-sheet.ts';
import { blankClutch } from './typed-clutch.ts';
import { blankPattern, type TypedCheck, type TypedPack, type TypedSheet, type TypedSlot } from './typed-sheet.ts';

type Keyed = { readonly key: number };

export function replaced<T extends Keyed>(rows: readonly T[], row: T): T[] {
  return rows.map((each) => (each.key === row.key ? row : each));
}

export function without<T extends Keyed>(rows: readonly T[], key: number): T[] {
  return rows.filter((each) => each.key !== key);
}

/** The row one place earlier (−1) or later (+1); at the end it stays. */
export function moved<T extends Keyed>(rows: readonly T[], key: number, by: -1 | 1): readonly T[] {
  const from = rows.findIndex((each) => each.key === key);
  const [row, other] = [rows[from], rows[from + by]];
  return row && other ? rows.with(from, other).with(from + by, row) : rows;
}

/** Its steels are matched by the family and the pack, unless another outline is typed. */
export function addPack(sheet: TypedSheet, name: string, familyName: string): TypedSheet {
  const pattern = blankPattern(`${familyName} ${name}`);
  const pack: TypedPack = {
    key: sheet.lastKey + 1,
    name,
    pattern,
    slots: [],
    rules: [],
    note: '',
    clutch: blankClutch,
  };
  return { ...sheet, packs: [...sheet.packs, pack], lastKey: pack.key };
}

export function changePack(sheet: TypedSheet, pack: TypedPack): TypedSheet {
  return { ...sheet, packs: replaced(sheet.packs, pack) };
}

/** Its checks and lists stay and belong to no pack. */
export function removePack(sheet: TypedSheet, key: number): TypedSheet {
  const freed = <T extends { readonly packKey: number | null }>(row: T): T =>
    row.packKey === key ? { ...row, packKey: null } : row;
  return {
    ...sheet,
    packs: without(sheet.packs, key),
    checks: sheet.checks.map(freed),
    lists: sheet.lists.map(freed),
  };
}

/** Slots of these kinds in place of what the pack held; steels and a selective ring are what is swapped. */
export function layOutPack(sheet: TypedSheet, pack: TypedPack, kinds: readonly PieceKind[]): TypedSheet {
  const { outline, frictionHeight, ringHeights } = pack.pattern;
  const slots = kinds.map((kind, index): TypedSlot => {
    const slot = bareSlot(sheet.lastKey + 1 + index, kind);
    if (kind === 'steel') return { ...slot, isAdjuster: true, outline };
    if (kind === 'friction') return { ...slot, height: frictionHeight };
    if (kind !== 'snap ring') return slot;
    return { ...slot, isAdjuster: true, outline: `${outline} ring`, catalogue: ringHeights };
  });
  return { ...changePack(sheet, { ...pack, slots }), lastKey: sheet.lastKey + slots.length };
}

/** One more steel, under whatever closes the pack at the ring. */
export function addSlot(sheet: TypedSheet, pack: TypedPack): TypedSheet {
  const key = sheet.lastKey + 1;
  const last = pack.slots.findLastIndex(({ kind }) => kind !== 'backing plate' && kind !== 'snap ring');
  const slots = pack.slots.toSpliced(last + 1, 0, slotLike(pack, key, 'steel'));
  return { ...changePack(sheet, { ...pack, slots }), lastKey: key };
}

/** A slot of this kind that takes after the pack's last one of it. */
export function slotLike(pack: TypedPack, key: number, kind: PieceKind): TypedSlot {
  const alike = pack.slots.findLast((slot) => slot.kind === kind && slot.key !== key);
  return alike ? { ...alike, key } : bareSlot(key, kind);
}

function bareSlot(key: number, kind: PieceKind): TypedSlot {
  return { key, kind, height: '', isAdjuster: false, outline: '', catalogue: '', facing: '' };
}

export function addRule(sheet: TypedSheet, pack: TypedPack): TypedSheet {
  const rule = { key: sheet.lastKey + 1, kind: 'thinnest-in', pieceKind: 'steel', places: '' } as const;
  return { ...changePack(sheet, { ...pack, rules: [...pack.rules, rule] }), lastKey: rule.key };
}

/** The check that a new one takes after: the last one, unless that is a clearance, of a pack or read as one. */
export function checkToTakeAfter(sheet: TypedSheet): TypedCheck | undefined {
  const last = sheet.checks.at(-1);
  return last?.packKey === null && last.method !== 'air' ? last : undefined;
}

/** A check after the last one, taking after it in everything that repeats down a page of a book. */
export function addCheck(sheet: TypedSheet, name: string): TypedSheet {
  const alike = checkToTakeAfter(sheet);
  return withCheck(sheet, {
    key: sheet.lastKey + 1,
    name,
    group: alike?.group ?? '',
    packKey: null,
    method: alike?.method ?? 'direct',
    unit: alike?.unit ?? sheet.lengthUnit,
    limits: '',
    holdsFor: alike?.holdsFor ?? 'mean',
    waveState: alike?.waveState ?? 'none',
    spots: alike?.spots ?? '1',
    shims: '',
    sourceNote: sheet.checks.at(-1)?.sourceNote ?? '',
  });
}

/** The check of a pack's clearance by air, as it is usually asked for; only its limits are left to type. */
export function addClearanceCheck(sheet: TypedSheet, pack: TypedPack): TypedSheet {
  return withCheck(sheet, {
    key: sheet.lastKey + 1,
    name: `${pack.name.trim()} clearance`,
    group: 'Clearance',
    packKey: pack.key,
    method: 'air',
    unit: sheet.lengthUnit,
    limits: '',
    holdsFor: 'mean and tightest',
    waveState: pack.slots.some((slot) => slot.kind === 'wave plate') ? 'in' : 'none',
    spots: '4',
    shims: '',
    sourceNote: sheet.checks.at(-1)?.sourceNote ?? '',
  });
}

function withCheck(sheet: TypedSheet, check: TypedCheck): TypedSheet {
  return { ...sheet, checks: [...sheet.checks, check], lastKey: check.key };
}

export function changeCheck(sheet: TypedSheet, check: TypedCheck): TypedSheet {
  return { ...sheet, checks: replaced(sheet.checks, check) };
}

/** The check read another way; a unit that this way cannot give makes room for one that it can. */
export function readBy(check: TypedCheck, method: ReadingMethod, sheet: TypedSheet): TypedCheck {
  const { quantity } = unitNamed(check.unit);
  const isLength = method === 'air' || method === 'feeler' || method === 'dial';
  if (isLength && quantity !== 'length') return { ...check, method, unit: sheet.lengthUnit };
  if (method === 'count') return { ...check, method, unit: '' };
  if (method === 'drop' && quantity !== 'pressure') return { ...check, method, unit: 'psi' };
  if (method === 'direct' && check.method === 'count') return { ...check, method, unit: sheet.lengthUnit };
  return { ...check, method };
}
