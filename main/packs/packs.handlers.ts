// Packs, from the contract to the service.
import type { Handlers } from '../rpc/handler.ts';
import { planShim } from './end-play.service.ts';
import { getPack, planSwaps, recordMockUp } from './packs.service.ts';
import { printPullList } from './pull-list-paper.service.ts';
import { planUnit } from './unit-plan.service.ts';

export const packsHandlers: Handlers<'packs'> = {
  'packs.getPack': (desk, input) => desk.shop().read((reading) => getPack(reading, input)),
  'packs.recordMockUp': (desk, input) => desk.shop().write((writing, now) => recordMockUp(writing, now, input)),
  'packs.planSwaps': (desk, input) => desk.shop().read((reading) => planSwaps(reading, input)),
  'packs.planUnit': (desk, input) => planUnit(desk.shop(), input),
  'packs.printPullList': (desk, input) => printPullList(desk.shop(), input),
  'packs.planShim': (desk, input) => desk.shop().read((reading) => planShim(reading, input)),
};
