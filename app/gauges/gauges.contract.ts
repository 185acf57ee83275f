// What the gauges room may be asked, joined from its parts.
import { agreementContract } from './agreement.contract.ts';
import { registerContract } from './register.contract.ts';
import { studiesContract } from './studies.contract.ts';
import { touchedContract } from './touched.contract.ts';

export const gaugesContract = {
  ...registerContract,
  ...touchedContract,
  ...studiesContract,
  ...agreementContract,
} as const;
