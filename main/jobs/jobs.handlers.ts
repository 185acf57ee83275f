// Jobs, from the contract to the services.
import type { Handlers } from '../rpc/handler.ts';
import { printBuildReport } from './build-report.service.ts';
import { estimateHandlers } from './estimate.handlers.ts';
import { checkIn, listJobs, listStages, moveToStage, overrideCheck } from './jobs.service.ts';
import { getJob } from './ticket.service.ts';

export const jobsHandlers: Handlers<'jobs'> = {
  ...estimateHandlers,
  'jobs.listStages': (desk) => desk.shop().read(listStages),
  'jobs.listJobs': (desk, input) => desk.shop().read((reading) => listJobs(reading, input)),
  'jobs.getJob': (desk, input) => desk.shop().read((reading) => getJob(reading, input)),
  'jobs.checkIn': (desk, input) => desk.shop().write((writing, now) => checkIn(writing, now, input)),
  'jobs.moveToStage': (desk, input) => desk.shop().write((writing, now) => moveToStage(writing, now, input)),
  'jobs.overrideCheck': (desk, input) => desk.shop().write((writing, now) => overrideCheck(writing, now, input)),
  'jobs.printBuildReport': (desk, input) => printBuildReport(desk.shop(), input),
};
