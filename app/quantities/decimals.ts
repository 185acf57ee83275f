// Numbers that were typed as decimals: how many decimals they carry, so that sums and differences carry no more.

/** Decimals of the shortest text that means this number: 3 for 0.031, 0 for 1200, 7 for 2.5e-6. */
export function decimalsOf(value: number): number {
  const [digits = '', exponent = '0'] = String(value).split('e');
  return Math.max(0, (digits.split('.')[1]?.length ?? 0) - Number(exponent));
}

/** The double nearest to `value` rounded to so many decimals: 0.097 − 0.066 becomes 0.031. */
export function roundToDecimals(value: number, decimals: number): number {
  return decimals > 100 ? value : Number(value.toFixed(decimals));
}
