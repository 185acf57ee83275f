// What the renderer may ask of main, and nothing else. Each room brings its own methods; this file only joins them.
import type { z } from 'zod';
import { aboutContract } from '../about/about.contract.ts';
import { backupsContract } from '../backups/backups.contract.ts';
import { clutchContract } from '../clutch/clutch.contract.ts';
import { comebacksContract } from '../comebacks/comebacks.contract.ts';
import { customersContract } from '../customers/customers.contract.ts';
import { gaugesContract } from '../gauges/gauges.contract.ts';
import { indicatorsContract } from '../indicators/indicators.contract.ts';
import { jobsContract } from '../jobs/jobs.contract.ts';
import { packsContract } from '../packs/packs.contract.ts';
import { photosContract } from '../photos/photos.contract.ts';
import { readingsContract } from '../readings/readings.contract.ts';
import { shopContract } from '../shop/shop.contract.ts';
import { specsContract } from '../specs/specs.contract.ts';
import { stockContract } from '../stock/stock.contract.ts';
import { unitsContract } from '../units/units.contract.ts';
import { updatesContract } from '../updates/updates.contract.ts';

export const contract = {
  ...shopContract,
  ...backupsContract,
  ...customersContract,
  ...unitsContract,
  ...specsContract,
  ...jobsContract,
  ...readingsContract,
  ...packsContract,
  ...photosContract,
  ...stockContract,
  ...indicatorsContract,
  ...gaugesContract,
  ...clutchContract,
  ...comebacksContract,
  ...updatesContract,
  ...aboutContract,
} as const;

export type Contract = typeof contract;
export type MethodName = keyof Contract;
export type Input<M extends MethodName> = z.input<Contract[M]['input']>;
export type ParsedInput<M extends MethodName> = z.output<Contract[M]['input']>;
export type Output<M extends MethodName> = z.output<Contract[M]['output']>;
