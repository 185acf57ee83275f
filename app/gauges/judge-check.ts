// A gauge held against something known: the error at each point, the worst of them, and whether it may stay in use.

/** What it should have said and what it said, in base units. */
export type CheckPoint = { readonly nominal: number; readonly read: number };

export type JudgedCheck = {
  /** Read less nominal, in the order of the points. */
  readonly errors: readonly number[];
  /** The error farthest from zero, with its sign. */
  readonly worst: number;
  /** null where no permitted error is stated. */
  readonly isWithin: boolean | null;
};

/** Inside when no error is larger than permitted, as the certificate states it: without a guard. At least one point. */
export function judgeCheck(points: readonly CheckPoint[], permittedError: number | null): JudgedCheck {
  const errors = points.map(({ nominal, read }) => read - nominal);
  const worst = errors.reduce((most, error) => (Math.abs(error) > Math.abs(most) ? error : most), 0);
  return { errors, worst, isWithin: permittedError === null ? null : Math.abs(worst) <= permittedError };
}

/** By how much a reading may be off by what a check found: from none at all to the farthest error on each side. */
export function errorSpan(errors: readonly number[]): { readonly low: number; readonly high: number } {
  return { low: Math.min(0, ...errors), high: Math.max(0, ...errors) };
}
