// Units that came back, joined from what is asked of them.
import { fleetContract } from './fleet.contract.ts';
import { logContract } from './log.contract.ts';
import { traceContract } from './trace.contract.ts';

export const comebacksContract = {
  ...logContract,
  ...traceContract,
  ...fleetContract,
} as const;
