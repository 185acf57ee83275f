// What is wrong with a spec sheet before it is saved, one plain sentence.
import { accept, type Result, refuse } from '../base/result.ts';
import { clutchProblem } from '../clutch/clutch-figures.ts';
import { formatAmount } from '../quantities/format-amount.ts';
import { readUnitNames, type Unit, unitNamed } from '../quantities/units.ts';
import { listProblem } from './list-problems.ts';
import { pictureProblem, repeatedTitle } from './picture-problems.ts';
import type { Check, Limits, Pack, SpecSheet } from './spec-sheet.ts';

/** The sheet itself, or a refusal that names the pack, check, list or picture and what to put right. */
export function soundSheet(sheet: SpecSheet): Result<SpecSheet> {
  const problem =
    repeatedName('pack', sheet.packs) ??
    repeatedName('check', sheet.checks) ??
    sheet.packs.map(packProblem).find(Boolean) ??
    sheet.checks.map((check) => checkProblem(check, sheet.packs)).find(Boolean) ??
    repeatedName('list', sheet.lists) ??
    sheet.lists.map((list) => listProblem(list, sheet.packs)).find(Boolean) ??
    repeatedTitle(sheet.pictures) ??
    sheet.pictures.map((picture) => pictureProblem(picture, sheet)).find(Boolean);
  return problem ? refuse('spec', problem) : accept(sheet);
}

function repeatedName(what: string, named: ReadonlyArray<{ name: string }>): string | undefined {
  const seen = new Set<string>();
  for (const { name } of named) {
    if (seen.has(name)) return `There are two ${what}s called ${name}: give one another name.`;
    seen.add(name);
  }
  return undefined;
}

/** What is wrong with a pack by itself, in one sentence that names it. */
export function packProblem(pack: Pack): string | undefined {
  for (const [index, slot] of pack.slots.entries()) {
    const name = `${pack.name}, slot ${index + 1}`;
    if (slot.isAdjuster && slot.outline === '')
      return `${name}: an adjuster needs an outline, so that plates can be matched to it.`;
    if (!slot.isAdjuster && slot.catalogue_nm.length > 0)
      return `${name} has catalogue heights but is not an adjuster.`;
  }
  const clutch = pack.clutch === null ? undefined : clutchProblem(pack.clutch);
  if (clutch !== undefined) return `${pack.name}, clutch: ${clutch}`;
  for (const rule of pack.rules) {
    const count = pack.slots.filter((slot) => slot.kind === rule.pieceKind).length;
    if (count === 0) return `${pack.name} has a rule for its ${rule.pieceKind}s but holds none.`;
    if (rule.kind !== 'all-equal' && rule.places.some((place) => place > count)) {
      return `${pack.name} has a rule for ${rule.pieceKind} ${Math.max(...rule.places)} but holds only ${count}.`;
    }
  }
  return undefined;
}

/** What is wrong with a check beside the packs of its sheet, in one sentence that names it. */
export function checkProblem(check: Check, packs: ReadonlyArray<Pick<Pack, 'name'>>): string | undefined {
  const unit = unitNamed(check.unit);
  if (unit.quantity !== check.quantity)
    return `${check.name}: ${check.unit || 'a count'} is not a unit of ${check.quantity}.`;
  if (!readUnitNames.includes(check.unit)) return `${check.name}: no check is read in ${check.unit}.`;
  if (check.packName !== null && !packs.some((pack) => pack.name === check.packName)) {
    return `${check.name} belongs to a pack called ${check.packName}, which is not on the sheet.`;
  }
  if ((check.method === 'air' || check.method === 'feeler') && check.quantity !== 'length') {
    return `${check.name}: a reading by ${check.method} is a length.`;
  }
  const problem = limitsProblem(check.limits, unit);
  return problem && `${check.name}: ${problem}`;
}

/** What is wrong with limits by themselves, in words that can follow a name and a colon. */
export function limitsProblem(limits: Limits, unit: Unit): string | undefined {
  const shown = (amount: number) => formatAmount(amount, unit);
  if ((limits.kind === 'range' || limits.kind === 'target') && limits.low >= limits.high) {
    return `the low limit ${shown(limits.low)} is not below the high limit ${shown(limits.high)}.`;
  }
  if (limits.kind === 'target' && (limits.target < limits.low || limits.target > limits.high)) {
    return `the target ${shown(limits.target)} lies outside ${shown(limits.low)} to ${shown(limits.high)}.`;
  }
  if (limits.kind === 'variants') {
    const sorted = limits.variants.toSorted((a, b) => a.nominal - b.nominal);
    const touching = sorted.findIndex((variant, index) => {
      const next = sorted[index + 1];
      return next !== undefined && variant.nominal + variant.within >= next.nominal - next.within;
    });
    const [first, second] = [sorted[touching], sorted[touching + 1]];
    if (first && second) return `${first.name} and ${second.name} overlap, so a reading could not tell them apart.`;
  }
  return undefined;
}
