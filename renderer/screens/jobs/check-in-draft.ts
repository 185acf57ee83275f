// What is typed at check-in before it is a job, and what it means.
import type { Input } from '../../../app/contract/contract.ts';
import type { Customer } from '../../../app/customers/customers.contract.ts';
import type { Distance } from '../../../app/jobs/distance.contract.ts';
import { blankDiagnosis, type Diagnosis } from '../../../app/jobs/door.contract.ts';
import { parseDistance } from '../../../app/jobs/parse-distance.ts';
import type { DecimalMark } from '../../../app/quantities/format-amount.ts';
import type { Unit, Use } from '../../../app/units/units.contract.ts';
import type { CoveredTyped } from '../../comebacks/CoveredEntry.tsx';
import type { VisitThatLeft } from './VisitsOfUnit.tsx';

export type FoundUnit = Unit & { readonly visits: number };

export type CheckInDraft = {
  /** Taken from those the book knows; null for somebody new. */
  readonly knownCustomer: Customer | null;
  readonly name: string;
  readonly phone: string;
  readonly email: string;
  readonly knownUnit: FoundUnit | null;
  readonly familyId: number | null;
  readonly serial: string;
  readonly vehicle: string;
  readonly use: Use;
  readonly complaint: string;
  readonly distance: string;
  readonly distanceUnit: 'miles' | 'km' | 'passes';
  readonly caseTag: string;
  readonly diagnosis: Diagnosis;
  /** yyyy-mm-dd, or empty. */
  readonly promisedOn: string;
  /** null: the whole rebuild. */
  readonly smallJobId: number | null;
  /** The build it came back from, when it is logged as a comeback; null: it is not. */
  readonly comeback: (CoveredTyped & { readonly build: VisitThatLeft }) | null;
};

export const blankCheckIn: CheckInDraft = {
  knownCustomer: null,
  name: '',
  phone: '',
  email: '',
  knownUnit: null,
  familyId: null,
  serial: '',
  vehicle: '',
  use: 'street',
  complaint: '',
  distance: '',
  distanceUnit: 'miles',
  caseTag: '',
  diagnosis: blankDiagnosis,
  promisedOn: '',
  smallJobId: null,
  comeback: null,
};

/** What stands on the unit as far as it can be read; null otherwise. */
export function distanceOf({ distance, distanceUnit }: CheckInDraft, decimalMark: DecimalMark): Distance | null {
  const read = parseDistance(distance, decimalMark);
  return read.ok && read.value !== null ? { amount: read.value, unit: distanceUnit } : null;
}

export type CheckInRefusals = { customer?: string; family?: string; distance?: string };

/** One plain sentence for each entry that cannot be taken as it stands. */
export function refusalsOf(draft: CheckInDraft, decimalMark: DecimalMark): CheckInRefusals {
  const distance = parseDistance(draft.distance, decimalMark);
  return {
    ...(!draft.knownCustomer && draft.name.trim() === '' && { customer: 'Type whose unit it is.' }),
    ...(!draft.knownUnit && draft.familyId === null && { family: 'Choose the family of the unit.' }),
    ...(!distance.ok && { distance: distance.refusal.message }),
  };
}

/** The call that checks this unit in; null while something is refused. */
export function checkInOf(draft: CheckInDraft, decimalMark: DecimalMark, by: number): Input<'jobs.checkIn'> | null {
  const distance = parseDistance(draft.distance, decimalMark);
  if (!distance.ok || Object.keys(refusalsOf(draft, decimalMark)).length > 0) return null;
  const { knownCustomer, name, phone, email, knownUnit, familyId, serial, vehicle, use } = draft;
  return {
    customer: knownCustomer ? { customerId: knownCustomer.customerId } : { name, phone, email },
    unit: knownUnit ? { unitId: knownUnit.unitId } : { familyId: familyId ?? 0, serial, vehicle, use },
    complaint: draft.complaint,
    caseTag: draft.caseTag,
    diagnosis: draft.diagnosis,
    promisedOn: draft.promisedOn === '' ? null : draft.promisedOn,
    smallJobId: draft.smallJobId,
    distance: distance.value === null ? null : { amount: distance.value, unit: draft.distanceUnit },
    by,
  };
}

/** The call that checks this unit in as a comeback on `day`; null while something is refused or it is none. */
export function comebackOf(
  draft: CheckInDraft,
  decimalMark: DecimalMark,
  by: number,
  day: string,
): Input<'comebacks.logComeback'> | null {
  const whole = checkInOf(draft, decimalMark, by);
  if (whole === null || draft.comeback === null) return null;
  const { by: _, ...checkIn } = whole;
  const { build, covered, coveredNote } = draft.comeback;
  return {
    builtJobId: build.jobId,
    ticket: { checkIn },
    cameBackOn: day,
    customerSays: draft.complaint,
    distance: checkIn.distance,
    covered,
    coveredNote,
    by,
  };
}
