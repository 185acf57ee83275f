// A spec sheet as it stands while somebody edits it: amounts are text as typed, so that nothing is lost or rounded.
import type { Settings } from '../../../app/shop/shop.contract.ts';
import { asksText } from '../../../app/specs/asks-text.ts';
import { heightsText } from '../../../app/specs/heights-text.ts';
import { limitsText } from '../../../app/specs/limits-text.ts';
import type { Asks, ListLine, SpecList } from '../../../app/specs/spec-list.ts';
import type { Check, Pack, PieceKind, PlacementRule, Slot } from '../../../app/specs/spec-sheet.ts';
import type { Revision } from '../../../app/specs/specs.contract.ts';
import type { PackPattern } from './pack-pattern.ts';
import { type TypedClutch, typedClutch } from './typed-clutch.ts';
import { type Figures, heightField, limitsField, washersField } from './typed-figures.ts';
import { type TypedPicture, typedPictures } from './typed-pictures.ts';

/** Tells the rows of one sheet apart while they are renamed and moved. */
type Key = { readonly key: number };

export type TypedSlot = Key & {
  readonly kind: PieceKind;
  readonly height: string;
  readonly isAdjuster: boolean;
  readonly outline: string;
  readonly catalogue: string;
  readonly facing: string;
};

export type TypedRule = Key & {
  readonly kind: PlacementRule['kind'];
  readonly pieceKind: PieceKind;
  readonly places: string;
};

/** The counts a pack is laid out from in one go, as far as they were typed. */
export type TypedPattern = PackPattern & {
  readonly outline: string;
  readonly frictionHeight: string;
  readonly ringHeights: string;
};

export type TypedPack = Key & {
  readonly name: string;
  readonly pattern: TypedPattern;
  readonly slots: readonly TypedSlot[];
  readonly rules: readonly TypedRule[];
  readonly note: string;
  readonly clutch: TypedClutch;
};

export type TypedCheck = Key &
  Pick<Check, 'name' | 'group' | 'method' | 'unit' | 'holdsFor' | 'waveState' | 'sourceNote'> & {
    readonly packKey: number | null;
    readonly limits: string;
    readonly spots: string;
    readonly shims: string;
  };

/** What it expects stands as typed: "4", "smooth, scored (off)", "2100-2400, 5 s". */
export type TypedLine = Key & { readonly words: string; readonly kind: Asks['kind']; readonly expects: string };

export type TypedList = Key &
  Pick<SpecList, 'name' | 'when' | 'sourceNote'> & {
    readonly packKey: number | null;
    readonly lines: readonly TypedLine[];
  };

export type TypedSheet = Figures & {
  /** The revision it began from. */
  readonly basis: { readonly number: number; readonly savedAt: string };
  readonly sourceNote: string;
  readonly packs: readonly TypedPack[];
  readonly checks: readonly TypedCheck[];
  readonly lists: readonly TypedList[];
  readonly pictures: readonly TypedPicture[];
  readonly lastKey: number;
};

/** The saved sheet, ready to be edited: `readSheet` gives the same sheet back. */
export function typedSheet(revision: Revision, settings: Settings): TypedSheet {
  const { lengthUnit, decimalMark } = settings;
  const figures = { lengthUnit, decimalMark };
  let lastKey = 0;
  const key = () => ++lastKey;
  const packs = revision.packs.map((pack) => typedPack(pack, figures, key));
  const packKeys = new Map(packs.map((pack) => [pack.name, pack.key]));
  const checks = revision.checks.map((check): TypedCheck => {
    const { name, group, method, unit, holdsFor, waveState, sourceNote } = check;
    return {
      key: key(),
      ...{ name, group, method, unit, holdsFor, waveState, sourceNote },
      packKey: packKeys.get(check.packName ?? '') ?? null,
      limits: limitsText(check.limits, limitsField(check, figures)),
      spots: String(check.spots),
      shims: heightsText(check.shims_nm, washersField(check, figures)),
    };
  });
  const lists = revision.lists.map(
    ({ name, when, packName, lines, sourceNote }): TypedList => ({
      key: key(),
      ...{ name, when, sourceNote },
      packKey: packKeys.get(packName ?? '') ?? null,
      lines: lines.map((line) => typedLine(line, key())),
    }),
  );
  const pictures = typedPictures(revision.pictures, { checks, lists }, key);
  const basis = { number: revision.number, savedAt: revision.savedAt };
  return { ...figures, basis, sourceNote: revision.sourceNote, packs, checks, lists, pictures, lastKey };
}

export function typedLine({ words, asks }: ListLine, key: number): TypedLine {
  return { key, words, kind: asks.kind, expects: asksText(asks) };
}

function typedPack(pack: Pack, figures: Figures, key: () => number): TypedPack {
  const slots = pack.slots.map((slot) => typedSlot(slot, figures, key()));
  return {
    key: key(),
    name: pack.name,
    pattern: patternOf(slots),
    slots,
    rules: pack.rules.map((rule) => ({
      key: key(),
      kind: rule.kind,
      pieceKind: rule.pieceKind,
      places: rule.kind === 'all-equal' ? '' : rule.places.join(' '),
    })),
    note: pack.note,
    clutch: typedClutch(pack.clutch, figures),
  };
}

function patternOf(slots: readonly TypedSlot[]): TypedPattern {
  const ofKind = (kind: PieceKind) => slots.filter((slot) => slot.kind === kind);
  const first = slots.find(({ kind }) => kind === 'steel' || kind === 'friction')?.kind;
  return {
    steels: String(ofKind('steel').length),
    frictions: String(ofKind('friction').length),
    first: first === 'friction' ? 'friction' : 'steel',
    hasApplyPlate: ofKind('apply plate').length > 0,
    hasWavePlate: ofKind('wave plate').length > 0,
    hasBackingPlate: ofKind('backing plate').length > 0,
    hasSelectiveRing: ofKind('snap ring').length > 0,
    outline: ofKind('steel')[0]?.outline ?? '',
    frictionHeight: ofKind('friction')[0]?.height ?? '',
    ringHeights: ofKind('snap ring')[0]?.catalogue ?? '',
  };
}

/** A pattern nothing was typed into yet: a backing plate and a fixed ring, as most packs have them. */
export function blankPattern(outline: string): TypedPattern {
  return { ...patternOf([]), steels: '', frictions: '', hasBackingPlate: true, outline };
}

function typedSlot(slot: Slot, figures: Figures, key: number): TypedSlot {
  const field = heightField(figures);
  const height = slot.nominal_nm === null ? '' : heightsText([slot.nominal_nm], field);
  const { kind, isAdjuster, outline, facing } = slot;
  return { key, kind, height, isAdjuster, outline, catalogue: heightsText(slot.catalogue_nm, field), facing };
}
