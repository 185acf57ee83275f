// The clutch, from the contract to the service.
import type { Handlers } from '../rpc/handler.ts';
import { getClutch, stateLoad } from './clutch.service.ts';

export const clutchHandlers: Handlers<'clutch'> = {
  'clutch.getClutch': (desk, input) => desk.shop().read((reading) => getClutch(reading, input)),
  'clutch.stateLoad': (desk, input) => desk.shop().write((writing, now) => stateLoad(writing, now, input)),
};
