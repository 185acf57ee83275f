// Readings, from the contract to the service.
import type { Handlers } from '../rpc/handler.ts';
import {
  getTake,
  lastSetup,
  latestTake,
  listTakes,
  noteAtSpot,
  recordReading,
  startTake,
  supersedeReading,
} from './readings.service.ts';
import { getRepeatability } from './take-figures.service.ts';

export const readingsHandlers: Handlers<'readings'> = {
  'readings.lastSetup': (desk, input) => desk.shop().read((reading) => lastSetup(reading, input)),
  'readings.latestTake': (desk, input) => desk.shop().read((reading) => latestTake(reading, input)),
  'readings.getTake': (desk, input) => desk.shop().read((reading) => getTake(reading, input)),
  'readings.listTakes': (desk, input) => desk.shop().read((reading) => listTakes(reading, input)),
  'readings.getRepeatability': (desk) => desk.shop().read((reading) => getRepeatability(reading)),
  'readings.startTake': (desk, input) => desk.shop().write((writing, now) => startTake(writing, now, input)),
  'readings.recordReading': (desk, input) => desk.shop().write((writing, now) => recordReading(writing, now, input)),
  'readings.supersedeReading': (desk, input) =>
    desk.shop().write((writing, now) => supersedeReading(writing, now, input)),
  'readings.noteAtSpot': (desk, input) => desk.shop().write((writing, now) => noteAtSpot(writing, now, input)),
};
