// The rows of the units room.
import type { Generated } from 'kysely';

export interface UnitsTable {
  unit_id: Generated<number>;
  family_id: number;
  serial: string;
  vehicle: string;
  use: 'street' | 'tow' | 'competition';
}

export type UnitsTables = { units: UnitsTable };
