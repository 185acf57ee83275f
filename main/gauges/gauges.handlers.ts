// Gauges, from the contract to their services.
import { randomInt } from 'node:crypto';
import { dayIn } from '../../app/jobs/calendar-days.ts';
import type { Handlers } from '../rpc/handler.ts';
import { addPair, chartCheck, compareMethods } from './agreement.service.ts';
import { getGauge, lastGauge, listGauges, recordCheck, retireGauge, saveGauge } from './register.service.ts';
import { getStudy, listStudies, recordStudyRead, startStudy, supersedeStudyRead } from './studies.service.ts';
import { listTouched } from './touched.service.ts';

export const gaugesHandlers: Handlers<'gauges'> = {
  'gauges.listGauges': (desk) => desk.shop().read((reading) => listGauges(reading, dayHere(desk.clock()))),
  'gauges.getGauge': (desk, input) => desk.shop().read((reading) => getGauge(reading, dayHere(desk.clock()), input)),
  'gauges.lastGauge': (desk, input) => desk.shop().read((reading) => lastGauge(reading, input)),
  'gauges.saveGauge': (desk, input) => desk.shop().write((writing, now) => saveGauge(writing, now, input)),
  'gauges.retireGauge': (desk, input) => desk.shop().write((writing, now) => retireGauge(writing, now, input)),
  'gauges.recordCheck': (desk, input) =>
    desk.shop().write((writing, now) => recordCheck(writing, now, dayHere(now), input)),
  'gauges.listTouched': (desk, input) => desk.shop().readApart((reading) => listTouched(reading, zoneHere(), input)),
  'gauges.listStudies': (desk) => desk.shop().read(listStudies),
  'gauges.getStudy': (desk, input) => desk.shop().read((reading) => getStudy(reading, input)),
  'gauges.startStudy': (desk, input) =>
    desk.shop().write((writing, now) => startStudy(writing, now, randomInt(2 ** 31), input)),
  'gauges.recordStudyRead': (desk, input) => desk.shop().write((writing, now) => recordStudyRead(writing, now, input)),
  'gauges.supersedeStudyRead': (desk, input) =>
    desk.shop().write((writing, now) => supersedeStudyRead(writing, now, input)),
  'gauges.compareMethods': (desk, input) => desk.shop().read((reading) => compareMethods(reading, input)),
  'gauges.addPair': (desk, input) => desk.shop().write((writing, now) => addPair(writing, now, input)),
  'gauges.chartCheck': (desk, input) => desk.shop().read((reading) => chartCheck(reading, input)),
};

function zoneHere(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone;
}

/** The day it is where this machine stands. */
function dayHere(now: string): string {
  return dayIn(now, zoneHere());
}
