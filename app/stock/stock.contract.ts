// What the stock room may be asked, joined from its shelves: plates, parts, lists, tracing.
import { listsContract } from './lists.contract.ts';
import { partsContract } from './parts.contract.ts';
import { loosePlatesContract, platesContract } from './plates.contract.ts';
import { tracingContract } from './tracing.contract.ts';

export const stockContract = {
  ...loosePlatesContract,
  ...platesContract,
  ...partsContract,
  ...listsContract,
  ...tracingContract,
} as const;
