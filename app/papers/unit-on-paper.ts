// The unit of a job as its papers name it.
import type { Job } from '../jobs/jobs.contract.ts';

export type UnitOnPaper = {
  readonly family: string;
  readonly serial: string;
  readonly vehicle: string;
  readonly use: string;
  readonly caseTag: string;
};

export function unitOnPaper({ unit, caseTag }: Pick<Job, 'unit' | 'caseTag'>): UnitOnPaper {
  const { familyName: family, serial, vehicle, use } = unit;
  return { family, serial, vehicle, use, caseTag };
}
