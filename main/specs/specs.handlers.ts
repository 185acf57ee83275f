// Specs, from the contract to the service.
import type { Handlers } from '../rpc/handler.ts';
import { addFamily, getRevision, listFamilies, saveSheet } from './specs.service.ts';

export const specsHandlers: Handlers<'specs'> = {
  'specs.listFamilies': (desk) => desk.shop().read(listFamilies),
  'specs.getRevision': (desk, input) => desk.shop().read((reading) => getRevision(reading, input)),
  'specs.addFamily': (desk, input) => desk.shop().write((writing, now) => addFamily(writing, now, input)),
  'specs.saveSheet': (desk, input) => desk.shop().write((writing, now) => saveSheet(writing, now, input)),
};
