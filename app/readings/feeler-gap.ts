// A gap by feeler gauge: it lies between the largest leaf that goes and the smallest that stops.
import { accept, type Result, refuse } from '../base/result.ts';
import { differenceAsTyped } from '../statistics/as-typed.ts';
import { meanOf } from '../statistics/summary.ts';
import { rectangular } from '../statistics/uncertainty-budget.ts';

/** By how much the feeler reads above the other method, learned from paired readings. */
export type FeelerBias = { readonly value: number; readonly standardUncertainty: number };

export type FeelerGap = { readonly value: number; readonly combined: number };

/**
 * The middle between `goes` and `stops`, less the bias, with its standard uncertainty: half the step / √3, in quadrature
 * with the bias's own. One length unit. Refuses a leaf that stops at or before the one that goes, and a bias that leaves a
 * gap below zero.
 * Source: JCGM 100:2008 4.3.7 (rectangular) and 3.2.4 (a known bias is corrected for).
 */
export function feelerGap(goes: number, stops: number, bias: FeelerBias | null = null): Result<FeelerGap> {
  if (!(goes >= 0)) return refuse('negative', 'The leaf that goes is zero or more.');
  if (!(stops > goes)) {
    return refuse('stops-before-it-goes', 'The leaf that stops must be thicker than the leaf that goes.');
  }
  const value = differenceAsTyped(meanOf([goes, stops]), bias?.value ?? 0);
  if (value < 0) return refuse('below-zero', 'The bias is larger than the gap that was felt, which cannot be.');
  const halfWidth = differenceAsTyped(stops, goes) / 2;
  return accept({ value, combined: Math.hypot(rectangular(halfWidth), bias?.standardUncertainty ?? 0) });
}
