// The clutch figures of a pack while somebody edits them: text as typed, a figure not stated is empty.
import type { ClutchFigures } from '../../../app/clutch/clutch.contract.ts';
import {
  clutchField,
  clutchFigureList,
  clutchProblem,
  type Figure,
  type FigureName,
  noClutchFigures,
} from '../../../app/clutch/clutch-figures.ts';
import { parseAmount } from '../../../app/quantities/parse-amount.ts';
import { amountText, type Figures } from './typed-figures.ts';

export type TypedClutch = Readonly<Record<FigureName, string>>;

export const blankClutch: TypedClutch = typedClutch(null, { lengthUnit: 'thou', decimalMark: '.' });

/** The saved figures, ready to be edited: `readClutch` gives the same back. */
export function typedClutch(figures: ClutchFigures | null, shop: Figures): TypedClutch {
  const typed = clutchFigureList.map((figure) => {
    const amount = figures?.[figure.name] ?? null;
    return [figure.name, amount === null ? '' : amountText(amount, clutchField(figure, shop))] as const;
  });
  return Object.fromEntries(typed) as TypedClutch;
}

export type ReadClutch = {
  /** null where nothing is stated, or while a figure cannot be read. */
  readonly value: ClutchFigures | null;
  readonly problems: Partial<Record<FigureName | 'whole', string>>;
};

export function readClutch(typed: TypedClutch, shop: Figures): ReadClutch {
  const value: Record<FigureName, number | null> = { ...noClutchFigures };
  const problems: Partial<Record<FigureName | 'whole', string>> = {};
  for (const figure of clutchFigureList) {
    const { name } = figure;
    if (typed[name].trim() === '') continue;
    const amount = parseAmount(typed[name], clutchField(figure, shop));
    const problem = amount.ok ? mustBeMore(figure, amount.value) : amount.refusal.message;
    if (amount.ok) value[name] = amount.value;
    if (problem !== undefined) problems[name] = problem;
  }
  if (Object.keys(problems).length > 0) return { value: null, problems };
  if (Object.values(value).every((each) => each === null)) return { value: null, problems };
  const whole = clutchProblem(value);
  return whole === undefined ? { value, problems } : { value: null, problems: { whole: sentence(whole) } };
}

const mayBeNothing: readonly FigureName[] = ['pistonInside_nm', 'frictionInside_nm', 'springs_mN'];

function mustBeMore({ name, label, quantity }: Figure, amount: number): string | undefined {
  if (quantity === 'speed' || amount > 0 || (amount === 0 && mayBeNothing.includes(name))) return undefined;
  return `${label} must be more than zero.`;
}

function sentence(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
