// Units that came back, joined from what is asked of them.
import { logContract } from './log.contract.ts';

export const comebacksContract = {
  ...logContract,
} as const;
