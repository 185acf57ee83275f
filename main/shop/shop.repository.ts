// The shop's settings and people in and out of the file.
import type { Person, Settings } from '../../app/shop/shop.contract.ts';
import type { Reading, Writing } from '../database/tables.ts';
import type { SettingsTable } from './shop.tables.ts';

export async function getSettings(reading: Reading): Promise<Settings & { isDemo: boolean }> {
  const row = await reading.selectFrom('settings').selectAll().executeTakeFirstOrThrow();
  return {
    isDemo: row.is_demo === 1,
    shopName: row.shop_name,
    lengthUnit: row.length_unit,
    decimalMark: row.decimal_mark,
    paper: row.paper,
    warranty: row.warranty,
    warrantyMonths: row.warranty_months,
    warrantyDistance: row.warranty_distance,
    warrantyDistanceUnit: row.warranty_distance_unit,
    warrantyPasses: row.warranty_passes,
    zeroReturnLimit_nm: row.zero_return_limit_nm,
    repeatLimit_nm: row.repeat_limit_nm,
    unevenLimit_nm: row.uneven_limit_nm,
    repeatability_nm: row.repeatability_nm,
    dialRepeatability_nm: row.dial_repeatability_nm,
    directRepeatability_nm: row.direct_repeatability_nm,
    repeatabilityDegreesOfFreedom: row.repeatability_degrees_of_freedom,
    handForceHalfWidth_nm: row.hand_force_half_width_nm,
    baseOnPumpHalfWidth_nm: row.base_on_pump_half_width_nm,
    dialResolution_nm: row.dial_resolution_nm,
    restack_nm: row.restack_nm,
    micrometerUncertainty_nm: row.micrometer_uncertainty_nm,
    decisionRule: row.decision_rule,
  };
}

function rowOf(settings: Settings): Omit<SettingsTable, 'settings_id' | 'is_demo'> {
  return {
    shop_name: settings.shopName,
    length_unit: settings.lengthUnit,
    decimal_mark: settings.decimalMark,
    paper: settings.paper,
    warranty: settings.warranty,
    warranty_months: settings.warrantyMonths,
    warranty_distance: settings.warrantyDistance,
    warranty_distance_unit: settings.warrantyDistanceUnit,
    warranty_passes: settings.warrantyPasses,
    zero_return_limit_nm: settings.zeroReturnLimit_nm,
    repeat_limit_nm: settings.repeatLimit_nm,
    uneven_limit_nm: settings.unevenLimit_nm,
    repeatability_nm: settings.repeatability_nm,
    dial_repeatability_nm: settings.dialRepeatability_nm,
    direct_repeatability_nm: settings.directRepeatability_nm,
    repeatability_degrees_of_freedom: settings.repeatabilityDegreesOfFreedom,
    hand_force_half_width_nm: settings.handForceHalfWidth_nm,
    base_on_pump_half_width_nm: settings.baseOnPumpHalfWidth_nm,
    dial_resolution_nm: settings.dialResolution_nm,
    restack_nm: settings.restack_nm,
    micrometer_uncertainty_nm: settings.micrometerUncertainty_nm,
    decision_rule: settings.decisionRule,
  };
}

export async function insertSettings(writing: Writing, settings: Settings, isDemo: boolean): Promise<void> {
  await writing
    .insertInto('settings')
    .values({ settings_id: 1, is_demo: isDemo ? 1 : 0, ...rowOf(settings) })
    .execute();
}

export async function replaceSettings(writing: Writing, settings: Settings): Promise<void> {
  await writing.updateTable('settings').set(rowOf(settings)).execute();
}

export async function listPeople(reading: Reading): Promise<Person[]> {
  const rows = await reading.selectFrom('people').selectAll().orderBy('person_id').execute();
  return rows.map((row) => ({
    personId: row.person_id,
    initials: row.initials,
    name: row.name,
    isRetired: row.retired_at !== null,
  }));
}

export async function insertPerson(writing: Writing, person: { name: string; initials: string }): Promise<number> {
  const { person_id } = await writing
    .insertInto('people')
    .values({ ...person, retired_at: null })
    .returning('person_id')
    .executeTakeFirstOrThrow();
  return person_id;
}

export async function retirePerson(writing: Writing, personId: number, now: string): Promise<void> {
  await writing.updateTable('people').set({ retired_at: now }).where('person_id', '=', personId).execute();
}
