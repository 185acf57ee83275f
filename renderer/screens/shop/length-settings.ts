// The lengths a shop has set: what each is called, what it does, and what the figure means.
import { accept, type Result, refuse } from '../../../app/base/result.ts';
import { withoutTrailingZeros } from '../../../app/charts/amounts.ts';
import { formatLength } from '../../../app/quantities/format-amount.ts';
import { parseAmount } from '../../../app/quantities/parse-amount.ts';
import type { Settings } from '../../../app/shop/shop.contract.ts';

export type LengthName = {
  [K in keyof Settings]: K extends `${string}_nm` ? K : never;
}[keyof Settings];

export type LengthSetting = {
  readonly name: LengthName;
  readonly label: string;
  /** What it does, in the trade's words. */
  readonly hint: string;
  /** What the figure is, for who asks why. */
  readonly why?: string;
  readonly mayBeNothing?: boolean;
};

/** What the bench asks about while it reads. */
export const benchLimits: readonly LengthSetting[] = [
  {
    name: 'zeroReturnLimit_nm',
    label: 'Back to zero within',
    hint: 'A dial that comes back farther off than this: the spot is done again.',
  },
  {
    name: 'repeatLimit_nm',
    label: 'Two reads agree within',
    hint: 'Two reads of one spot that differ by more ask for a third.',
  },
  {
    name: 'unevenLimit_nm',
    label: 'Even within',
    hint: 'More from the tightest spot to the loosest is called uneven, and the odd spot is asked again once.',
  },
];

/** What every ± is made of. */
export const handAndGauge: readonly LengthSetting[] = [
  {
    name: 'repeatability_nm',
    label: 'One reading by air repeats to',
    hint: 'Read one spot of one pack ten times, letting go in between.',
    why: 'The standard deviation of those readings: about two of three fall this close to their mean.',
  },
  {
    name: 'dialRepeatability_nm',
    label: 'One reading by dial repeats to',
    hint: 'End play or travel, pushed and pulled again each time.',
    why: 'The standard deviation of such readings.',
  },
  {
    name: 'directRepeatability_nm',
    label: 'One reading by micrometer repeats to',
    hint: 'One plate or bore, measured anew each time.',
    why: 'The standard deviation of such readings.',
  },
  {
    name: 'handForceHalfWidth_nm',
    label: 'Hand force moves the push by',
    hint: 'A light push against a firm one, either way.',
    why: 'Half the width of an even spread: any force of the hand is as likely as another. Divided by √3 in the budget.',
    mayBeNothing: true,
  },
  {
    name: 'baseOnPumpHalfWidth_nm',
    label: 'A base on the pump moves by',
    hint: 'The dial stands on the pump or lower drum and not on the drum that is read.',
    why: 'Half the width of an even spread, added only when the setup card says the base stood there.',
    mayBeNothing: true,
  },
  {
    name: 'dialResolution_nm',
    label: 'The dial is read to',
    hint: 'The smallest step you read off its face.',
    why: 'A reading is the difference of two dial states, each rounded by itself to this step.',
  },
  {
    name: 'restack_nm',
    label: 'Apart and together again changes by',
    hint: 'The same pack, taken apart, put back and read again.',
    why: 'The standard deviation of such changes. It widens what a swap is predicted to read, never a reading itself.',
    mayBeNothing: true,
  },
  {
    name: 'micrometerUncertainty_nm',
    label: 'The micrometer is sure to',
    hint: 'From its certificate, or from gauge blocks.',
    why: 'Its standard uncertainty: half of the ± on a certificate that states 95 in 100.',
  },
];

/** The length as it stands in its entry, exact. */
export function showLength(length_nm: number, settings: Settings): string {
  return withoutTrailingZeros(formatLength(length_nm, settings.lengthUnit, 6, settings.decimalMark));
}

/** The nanometres a person means, or one plain sentence. */
export function readLength(typed: string, setting: LengthSetting, settings: Settings): Result<number> {
  const { lengthUnit, decimalMark } = settings;
  const largest = 2_540_000;
  const length = parseAmount(typed, {
    quantity: 'length',
    unit: lengthUnit,
    decimalMark,
    largest,
    what: 'such a length',
  });
  if (!length.ok) return length;
  if (length.value < 0) return refuse('negative', 'Type it without a minus.');
  if (length.value === 0 && !setting.mayBeNothing) return refuse('nothing', 'It must be more than nothing.');
  return accept(length.value);
}
