// Every table there is, joined from the rooms, and the two hands that may touch them.
import type { Kysely } from 'kysely';
import type { ClutchTables } from '../clutch/clutch.tables.ts';
import type { ComebacksTables } from '../comebacks/comebacks.tables.ts';
import type { CustomersTables } from '../customers/customers.tables.ts';
import type { GaugesTables } from '../gauges/gauges.tables.ts';
import type { IndicatorsTables } from '../indicators/indicators.tables.ts';
import type { JobsTables } from '../jobs/jobs.tables.ts';
import type { PacksTables } from '../packs/packs.tables.ts';
import type { PhotosTables } from '../photos/photos.tables.ts';
import type { ReadingsTables } from '../readings/readings.tables.ts';
import type { ShopTables } from '../shop/shop.tables.ts';
import type { SpecsTables } from '../specs/specs.tables.ts';
import type { StockTables } from '../stock/stock.tables.ts';
import type { UnitsTables } from '../units/units.tables.ts';

export type Tables = ShopTables &
  CustomersTables &
  UnitsTables &
  SpecsTables &
  JobsTables &
  PacksTables &
  PhotosTables &
  StockTables &
  GaugesTables &
  IndicatorsTables &
  ClutchTables &
  ComebacksTables &
  ReadingsTables;

/** A hand that can only look. A writing hand can be given wherever this is asked for. */
export type Reading = Pick<Kysely<Tables>, 'selectFrom' | 'fn'>;

/** A hand inside a write transaction; only `OpenShop.write` gives one out. */
export type Writing = Pick<Kysely<Tables>, 'selectFrom' | 'fn' | 'insertInto' | 'updateTable' | 'deleteFrom'> & {
  readonly writes: true;
};
