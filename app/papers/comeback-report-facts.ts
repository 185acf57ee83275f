// What the report of a comeback is written from.
import type { FleetAnswer } from '../comebacks/fleet.contract.ts';
import type { Comeback } from '../comebacks/log.contract.ts';
import type { Trace } from '../comebacks/trace.contract.ts';
import type { Finding } from '../jobs/findings.contract.ts';
import type { CheckOfJob } from '../jobs/jobs.contract.ts';
import type { DecimalMark } from '../quantities/format-amount.ts';
import type { LengthUnit } from '../quantities/units.ts';
import type { Copy } from './build-report-facts.ts';
import type { PaperSize } from './paper.ts';

export type ComebackReportFacts = {
  readonly copy: Copy;
  readonly paper: PaperSize;
  readonly lengthUnit: LengthUnit;
  readonly decimalMark: DecimalMark;
  readonly shopName: string;
  readonly isDemo: boolean;
  /** A business day. */
  readonly printedOn: string;
  readonly comeback: Comeback;
  /** As the build left. */
  readonly built: readonly CheckOfJob[];
  readonly trace: Trace;
  /** What the builds of its family say together; null on the customer's copy. */
  readonly fleet: FleetAnswer | null;
  /** What the return teardown found and what was done about it. */
  readonly findings: readonly Finding[];
};
