// Customers, from the contract to the service.
import type { Handlers } from '../rpc/handler.ts';
import { findCustomers } from './customers.service.ts';

export const customersHandlers: Handlers<'customers'> = {
  'customers.findCustomers': (desk, input) => desk.shop().read((reading) => findCustomers(reading, input)),
};
