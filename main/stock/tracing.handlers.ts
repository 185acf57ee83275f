// Tracing and scanned codes, from the contract to their service.
import type { tracingContract } from '../../app/stock/tracing.contract.ts';
import type { Handlers } from '../rpc/handler.ts';
import { findCode, trace } from './tracing.service.ts';

export const tracingHandlers: Pick<Handlers<'stock'>, keyof typeof tracingContract> = {
  'stock.trace': (desk, input) => desk.shop().read((reading) => trace(reading, input)),
  'stock.findCode': (desk, input) => desk.shop().read((reading) => findCode(reading, input)),
};
