// Units, from the contract to the service.
import type { Handlers } from '../rpc/handler.ts';
import { findUnits } from './units.service.ts';

export const unitsHandlers: Handlers<'units'> = {
  'units.findUnits': (desk, input) => desk.shop().read((reading) => findUnits(reading, input)),
};
