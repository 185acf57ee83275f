// Who owns what came in.
import type { Customer } from '../../app/customers/customers.contract.ts';
import { found } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';

export async function findCustomers(reading: Reading, { text }: { text: string }): Promise<Customer[]> {
  const fragment = `%${text.replace(/[\\%_]/g, '\\$&')}%`;
  const rows = await reading
    .selectFrom('customers')
    .selectAll()
    .where((row) => row.or([row('name', 'like', fragment), row('phone', 'like', fragment)]))
    .orderBy('customer_id', 'desc')
    .limit(20)
    .execute();
  return rows.map(customerOfRow);
}

export async function getCustomer(reading: Reading, customerId: number): Promise<Customer> {
  const row = await reading
    .selectFrom('customers')
    .selectAll()
    .where('customer_id', '=', customerId)
    .executeTakeFirst();
  return customerOfRow(found(row, 'customer'));
}

/** The number of the customer named, who is added when new. */
export async function customerAtCheckIn(
  writing: Writing,
  given: { customerId: number } | { name: string; phone: string; email: string },
): Promise<number> {
  if ('customerId' in given) return (await getCustomer(writing, given.customerId)).customerId;
  const { customer_id } = await writing
    .insertInto('customers')
    .values({ ...given, note: '' })
    .returning('customer_id')
    .executeTakeFirstOrThrow();
  return customer_id;
}

function customerOfRow(row: {
  customer_id: number;
  name: string;
  phone: string;
  email: string;
  note: string;
}): Customer {
  const { customer_id, ...rest } = row;
  return { customerId: customer_id, ...rest };
}
