// What the gauges room may be asked, joined from its parts.
import { registerContract } from './register.contract.ts';

export const gaugesContract = { ...registerContract } as const;
