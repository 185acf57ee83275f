// Who owns what came in.
import { z } from 'zod';
import { id, line, requiredLine, text } from '../contract/fields.ts';
import { read } from '../contract/method.ts';

export const customer = z.strictObject({ customerId: id, name: requiredLine, phone: line, email: line, note: text });

export const customersContract = {
  'customers.findCustomers': read(
    'customers whose name or phone holds this text, newest first',
    z.strictObject({ text: line }),
    z.array(customer),
  ),
} as const;

export type Customer = z.infer<typeof customer>;
