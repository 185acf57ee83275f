// The rows of the customers room.
import type { Generated } from 'kysely';

export interface CustomersTable {
  customer_id: Generated<number>;
  name: string;
  phone: string;
  email: string;
  note: string;
}

export type CustomersTables = { customers: CustomersTable };
