// Jobs, from the contract to the services.
import type { Handlers } from '../rpc/handler.ts';
import { printBuildReport } from './build-report.service.ts';
import * as delivery from './delivery.service.ts';
import * as door from './door.service.ts';
import { estimateHandlers } from './estimate.handlers.ts';
import { widenJob } from './extent.service.ts';
import { findingsHandlers } from './findings.handlers.ts';
import * as history from './history.service.ts';
import { exportJob } from './job-export.service.ts';
import { checkIn, listJobs, overrideCheck } from './jobs.service.ts';
import * as lists from './lists-of-job.service.ts';
import * as stages from './stages.service.ts';
import { getJob } from './ticket.service.ts';

export const jobsHandlers: Handlers<'jobs'> = {
  ...estimateHandlers,
  ...findingsHandlers,
  'jobs.listStages': (desk) => desk.shop().read(stages.listStages),
  'jobs.changeStageNeeds': (desk, input) => desk.shop().write((writing) => stages.changeStageNeeds(writing, input)),
  'jobs.listMissing': (desk, input) => desk.shop().read((reading) => stages.listMissing(reading, input)),
  'jobs.listWithStock': (desk, input) => desk.shop().read((reading) => stages.listWithStock(reading, input)),
  'jobs.signOff': (desk, input) => desk.shop().write((writing, now) => stages.signOff(writing, now, input)),
  'jobs.listJobs': (desk, input) => desk.shop().read((reading) => listJobs(reading, input)),
  'jobs.getJob': (desk, input) => desk.shop().read((reading) => getJob(reading, input)),
  'jobs.checkIn': (desk, input) => desk.shop().write((writing, now) => checkIn(writing, now, input)),
  'jobs.moveToStage': (desk, input) => desk.shop().write((writing, now) => stages.moveToStage(writing, now, input)),
  'jobs.listIntakes': (desk, input) => desk.shop().read((reading) => door.listIntakes(reading, input)),
  'jobs.correctIntake': (desk, input) => desk.shop().write((writing, now) => door.correctIntake(writing, now, input)),
  'jobs.listVisits': (desk, input) => desk.shop().read((reading) => door.listVisits(reading, input)),
  'jobs.listPromises': (desk, input) => desk.shop().read((reading) => door.listPromises(reading, input)),
  'jobs.promiseDay': (desk, input) => desk.shop().write((writing, now) => door.promiseDay(writing, now, input)),
  'jobs.listCalls': (desk, input) => desk.shop().read((reading) => door.listCalls(reading, input)),
  'jobs.logCall': (desk, input) => desk.shop().write((writing, now) => door.logCall(writing, now, input)),
  'jobs.listListsOfJob': (desk, input) => desk.shop().read((reading) => lists.listListsOfJob(reading, input)),
  'jobs.answerLine': (desk, input) => desk.shop().write((writing, now) => lists.answerLine(writing, now, input)),
  'jobs.getHistory': (desk, input) => desk.shop().read((reading) => history.getHistory(reading, input)),
  'jobs.printBuildSheet': (desk, input) => history.printBuildSheet(desk.shop(), input),
  'jobs.printBenchSheet': (desk, input) => history.printBenchSheet(desk.shop(), input),
  'jobs.getDelivery': (desk, input) => desk.shop().read((reading) => delivery.getDelivery(reading, input)),
  'jobs.deliver': (desk, input) => desk.shop().write((writing, now) => delivery.deliver(writing, now, input)),
  'jobs.correctDelivery': (desk, input) =>
    desk.shop().write((writing, now) => delivery.correctDelivery(writing, now, input)),
  'jobs.takeBackDelivery': (desk, input) =>
    desk.shop().write((writing, now) => delivery.takeBackDelivery(writing, now, input)),
  'jobs.changeWarranty': (desk, input) =>
    desk.shop().write((writing, now) => delivery.changeWarranty(writing, now, input)),
  'jobs.widenJob': (desk, input) => desk.shop().write((writing, now) => widenJob(writing, now, input)),
  'jobs.overrideCheck': (desk, input) => desk.shop().write((writing, now) => overrideCheck(writing, now, input)),
  'jobs.exportJob': (desk, input) => exportJob(desk.shop(), input),
  'jobs.printBuildReport': (desk, input) => printBuildReport(desk.shop(), input),
};
