// Comebacks, from the contract to their services.
import { dayHere } from '../ports/clock.ts';
import type { Handlers } from '../rpc/handler.ts';
import { findBuilds } from './builds.service.ts';
import * as calls from './calls.service.ts';
import { printComebackReport } from './comeback-report.service.ts';
import { getCost } from './cost.service.ts';
import { fleetChoices } from './fleet-choices.service.ts';
import * as log from './log.service.ts';
import { listSharing, suggestShared } from './sharing.service.ts';
import { traceComeback } from './trace.service.ts';

export const comebacksHandlers: Handlers<'comebacks'> = {
  'comebacks.findBuilds': (desk, input) => desk.shop().read((reading) => findBuilds(reading, input)),
  'comebacks.logComeback': (desk, input) => desk.shop().write((writing, now) => log.logComeback(writing, now, input)),
  'comebacks.listComebacks': (desk, input) => desk.shop().read((reading) => log.listComebacks(reading, input)),
  'comebacks.getComeback': (desk, input) => desk.shop().read((reading) => log.getComeback(reading, input)),
  'comebacks.listOfJob': (desk, input) => desk.shop().read((reading) => log.listOfJob(reading, input)),
  'comebacks.writeCard': (desk, input) => desk.shop().write((writing, now) => log.writeCard(writing, now, input)),
  'comebacks.sayCause': (desk, input) => desk.shop().write((writing, now) => log.sayCause(writing, now, input)),
  'comebacks.takeBackCause': (desk, input) =>
    desk.shop().write((writing, now) => log.takeBackCause(writing, now, input)),
  'comebacks.trace': (desk, input) => traceComeback(desk.shop(), input),
  'comebacks.printReport': (desk, input) =>
    printComebackReport(desk.shop(), input, (selection) => desk.fleet.ask(desk.shop(), selection)),
  'comebacks.fleetChoices': (desk, input) => desk.shop().read((reading) => fleetChoices(reading, input)),
  'comebacks.askFleet': (desk, input) => desk.fleet.ask(desk.shop(), input),
  'comebacks.stopAsking': async (desk) => {
    desk.fleet.stop();
    return {};
  },
  'comebacks.suggestShared': (desk, input) => desk.shop().read((reading) => suggestShared(reading, input)),
  'comebacks.listSharing': (desk, input) =>
    desk.shop().readApart((reading) => listSharing(reading, dayHere(desk.clock()), input)),
  'comebacks.putOnList': (desk, input) => desk.shop().write((writing, now) => calls.putOnList(writing, now, input)),
  'comebacks.listToCall': (desk) => desk.shop().read((reading) => calls.listToCall(reading, dayHere(desk.clock()))),
  'comebacks.noteCall': (desk, input) => desk.shop().write((writing, now) => calls.noteCall(writing, now, input)),
  'comebacks.exportToCall': (desk) => calls.exportToCall(desk.shop()),
  'comebacks.printToCall': (desk, input) => calls.printToCall(desk.shop(), input),
  'comebacks.getCost': (desk) => desk.shop().readApart(getCost),
};
