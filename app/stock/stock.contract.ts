// What the stock room may be asked, joined from its shelves: plates, parts, lists, tracing.
import { loosePlatesContract } from './plates.contract.ts';

export const stockContract = { ...loosePlatesContract } as const;
