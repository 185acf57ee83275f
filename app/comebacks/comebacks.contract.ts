// Units that came back, joined from what is asked of them.
import { callsContract } from './calls.contract.ts';
import { costContract } from './cost.contract.ts';
import { fleetContract } from './fleet.contract.ts';
import { logContract } from './log.contract.ts';
import { traceContract } from './trace.contract.ts';

export const comebacksContract = {
  ...logContract,
  ...callsContract,
  ...costContract,
  ...traceContract,
  ...fleetContract,
} as const;
