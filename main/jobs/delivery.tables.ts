// The rows of a delivery and of the warranty a unit left with.
import type { Generated } from 'kysely';
import type { Distance } from '../../app/jobs/distance.contract.ts';

export interface DeliveriesTable {
  delivery_id: Generated<number>;
  job_id: number;
  delivered_to: string;
  /** null: taken back. */
  delivered_on: string | null;
  distance_amount: number | null;
  distance_unit: Distance['unit'] | null;
  handed_over_by: number;
  reason: string;
  recorded_at: string;
  recorded_by: number;
}

export interface WarrantiesTable {
  warranty_id: Generated<number>;
  job_id: number;
  in_service_on: string | null;
  months: number | null;
  distance_amount: number | null;
  distance_unit: 'miles' | 'km' | null;
  passes: number | null;
  reason: string;
  set_at: string;
  set_by: number;
}

export type DeliveryTables = { deliveries: DeliveriesTable; warranties: WarrantiesTable };
