// Specs, from the contract to the service.
import type { Handlers } from '../rpc/handler.ts';
import { dropSmallJob, listSmallJobs, saveSmallJob } from './small-jobs.service.ts';
import { addFamily, getRevision, listFamilies, saveSheet } from './specs.service.ts';

export const specsHandlers: Handlers<'specs'> = {
  'specs.listFamilies': (desk) => desk.shop().read(listFamilies),
  'specs.getRevision': (desk, input) => desk.shop().read((reading) => getRevision(reading, input)),
  'specs.listSmallJobs': (desk, input) => desk.shop().read((reading) => listSmallJobs(reading, input)),
  'specs.saveSmallJob': (desk, input) => desk.shop().write((writing, now) => saveSmallJob(writing, now, input)),
  'specs.dropSmallJob': (desk, input) => desk.shop().write((writing) => dropSmallJob(writing, input)),
  'specs.addFamily': (desk, input) => desk.shop().write((writing, now) => addFamily(writing, now, input)),
  'specs.saveSheet': (desk, input) => desk.shop().write((writing, now) => saveSheet(writing, now, input)),
};
