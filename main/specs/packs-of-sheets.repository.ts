// The packs of spec sheets out of the file: one statement for each thing they hold, however many packs they are.
import type { PlacementRule } from '../../app/specs/spec-sheet.ts';
import type { SavedPack } from '../../app/specs/specs.contract.ts';
import { clutchFiguresOfPacks } from '../clutch/clutch.repository.ts';
import { among } from '../database/among.ts';
import type { Reading } from '../database/tables.ts';

export async function listPacks(reading: Reading, revisionId: number): Promise<SavedPack[]> {
  return filled(
    reading,
    await reading.selectFrom('packs').selectAll().where('revision_id', '=', revisionId).orderBy('position').execute(),
  );
}

export async function findPack(reading: Reading, packId: number): Promise<SavedPack | undefined> {
  const rows = await reading.selectFrom('packs').selectAll().where('pack_id', '=', packId).execute();
  return (await filled(reading, rows))[0];
}

type PackRow = { readonly pack_id: number; readonly name: string; readonly note: string };

async function filled(reading: Reading, packs: readonly PackRow[]): Promise<SavedPack[]> {
  if (packs.length === 0) return [];
  const these = among(packs.map((pack) => pack.pack_id));
  const slots = await reading
    .selectFrom('slots')
    .selectAll()
    .where('pack_id', 'in', these)
    .orderBy('position')
    .execute();
  const heights = await reading
    .selectFrom('slot_catalogue')
    .innerJoin('slots', 'slots.slot_id', 'slot_catalogue.slot_id')
    .select(['slot_catalogue.slot_id', 'height_nm'])
    .where('pack_id', 'in', these)
    .orderBy('height_nm')
    .execute();
  const rules = await reading
    .selectFrom('placement_rules')
    .selectAll()
    .where('pack_id', 'in', these)
    .orderBy('position')
    .execute();
  const places = await reading
    .selectFrom('placement_rule_places')
    .innerJoin('placement_rules', 'placement_rules.placement_rule_id', 'placement_rule_places.placement_rule_id')
    .select(['placement_rule_places.placement_rule_id', 'place'])
    .where('pack_id', 'in', these)
    .orderBy('place')
    .execute();
  const figures = await clutchFiguresOfPacks(
    reading,
    packs.map((pack) => pack.pack_id),
  );
  return packs.map((pack) => ({
    packId: pack.pack_id,
    name: pack.name,
    note: pack.note,
    clutch: figures.get(pack.pack_id) ?? null,
    slots: slots
      .filter((slot) => slot.pack_id === pack.pack_id)
      .map((slot) => ({
        slotId: slot.slot_id,
        kind: slot.kind,
        nominal_nm: slot.nominal_nm,
        isAdjuster: slot.is_adjuster === 1,
        outline: slot.outline,
        catalogue_nm: heights.filter((each) => each.slot_id === slot.slot_id).map((each) => each.height_nm),
        facing: slot.facing,
      })),
    rules: rules
      .filter((rule) => rule.pack_id === pack.pack_id)
      .map(
        ({ rule, kind, placement_rule_id }): PlacementRule =>
          rule === 'all-equal'
            ? { kind: rule, pieceKind: kind }
            : {
                kind: rule,
                pieceKind: kind,
                places: places.filter((each) => each.placement_rule_id === placement_rule_id).map((each) => each.place),
              },
      ),
  }));
}
