// Gauges, from the contract to their services.
import { dayIn } from '../../app/jobs/calendar-days.ts';
import type { Handlers } from '../rpc/handler.ts';
import { getGauge, lastGauge, listGauges, recordCheck, retireGauge, saveGauge } from './register.service.ts';

export const gaugesHandlers: Handlers<'gauges'> = {
  'gauges.listGauges': (desk) => desk.shop().read((reading) => listGauges(reading, dayHere(desk.clock()))),
  'gauges.getGauge': (desk, input) => desk.shop().read((reading) => getGauge(reading, dayHere(desk.clock()), input)),
  'gauges.lastGauge': (desk, input) => desk.shop().read((reading) => lastGauge(reading, input)),
  'gauges.saveGauge': (desk, input) => desk.shop().write((writing, now) => saveGauge(writing, now, input)),
  'gauges.retireGauge': (desk, input) => desk.shop().write((writing, now) => retireGauge(writing, now, input)),
  'gauges.recordCheck': (desk, input) =>
    desk.shop().write((writing, now) => recordCheck(writing, now, dayHere(now), input)),
};

/** The day it is where this machine stands. */
function dayHere(now: string): string {
  return dayIn(now, Intl.DateTimeFormat().resolvedOptions().timeZone);
}
