// Every method of the contract and who answers it. The type holds that none is missing.
import type { MethodName, Output, ParsedInput } from '../../app/contract/contract.ts';
import { aboutHandlers } from '../about/about.handlers.ts';
import { backupsHandlers } from '../backups/backups.handlers.ts';
import { clutchHandlers } from '../clutch/clutch.handlers.ts';
import { comebacksHandlers } from '../comebacks/comebacks.handlers.ts';
import { customersHandlers } from '../customers/customers.handlers.ts';
import { gaugesHandlers } from '../gauges/gauges.handlers.ts';
import { indicatorsHandlers } from '../indicators/indicators.handlers.ts';
import { jobsHandlers } from '../jobs/jobs.handlers.ts';
import { packsHandlers } from '../packs/packs.handlers.ts';
import { photosHandlers } from '../photos/photos.handlers.ts';
import { readingsHandlers } from '../readings/readings.handlers.ts';
import type { Desk } from '../shop/desk.ts';
import { shopHandlers } from '../shop/shop.handlers.ts';
import { specsHandlers } from '../specs/specs.handlers.ts';
import { stockHandlers } from '../stock/stock.handlers.ts';
import { unitsHandlers } from '../units/units.handlers.ts';
import { updatesHandlers } from '../updates/updates.handlers.ts';

export const handlers: { [M in MethodName]: (desk: Desk, input: ParsedInput<M>) => Promise<Output<M>> } = {
  ...shopHandlers,
  ...backupsHandlers,
  ...customersHandlers,
  ...unitsHandlers,
  ...specsHandlers,
  ...jobsHandlers,
  ...readingsHandlers,
  ...packsHandlers,
  ...photosHandlers,
  ...stockHandlers,
  ...indicatorsHandlers,
  ...gaugesHandlers,
  ...clutchHandlers,
  ...comebacksHandlers,
  ...updatesHandlers,
  ...aboutHandlers,
};
