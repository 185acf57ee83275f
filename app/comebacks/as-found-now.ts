// A unit that came back, as it reads now beside what it was built to, and what its teardown found of it.
import { conditionWords, partWords } from '../jobs/finding-words.ts';
import type { Finding } from '../jobs/findings.contract.ts';
import type { Check } from '../specs/spec-sheet.ts';
import type { RecordedBuild } from './recorded-build.ts';
import { type ShopWords, sayAmount } from './say-amount.ts';
import type { AsFoundNow, FoundPart } from './trace.contract.ts';
import { packOfCheck, whatACheckTells } from './what-a-check-tells.ts';

/** A check as the return ticket read it before anything was done. */
export type ReadAsFound = {
  readonly jobId: number;
  readonly checkId: number;
  readonly takeId: number;
  readonly check: Check;
  readonly amount: number;
  readonly expanded: number | null;
};

/**
 * Each check read as found, beside the same of the build: the difference, and its expanded uncertainty, the root of the
 * sum of the squares of both, since the two were read apart (JCGM 100:2008 5.1.2). Where both share a gauge or a hand the
 * true one is smaller, so what it calls a change is one. A limit that moved between two revisions does not part them.
 */
export function asFoundNow(build: RecordedBuild, found: readonly ReadAsFound[], words: ShopWords): AsFoundNow[] {
  return found.map(({ check, amount, expanded, ...where }) => {
    const same = build.checks.find((each) => each.check.name === check.name && each.check.quantity === check.quantity);
    const built = { amount: same?.take?.amount ?? null, expanded: same?.take?.expanded ?? null };
    const difference = built.amount === null ? null : amount - built.amount;
    const ofDifference = expanded === null || built.expanded === null ? null : Math.hypot(expanded, built.expanded);
    const says = saysOf(difference, ofDifference);
    return {
      name: check.name,
      telling: whatACheckTells(check),
      packName: packOfCheck(check, build.packs)?.name ?? null,
      quantity: check.quantity,
      unit: check.unit,
      built,
      found: { amount, expanded },
      difference,
      expanded: ofDifference,
      says,
      sentence: sentenceOf(check, difference, says, words),
      opens: { kind: 'check', ...where },
    };
  });
}

function saysOf(difference: number | null, expanded: number | null): AsFoundNow['says'] {
  if (difference === null || expanded === null) return 'not known';
  if (Math.abs(difference) <= expanded) return 'no more than the readings can explain';
  return difference > 0 ? 'more' : 'less';
}

function sentenceOf(check: Check, difference: number | null, says: AsFoundNow['says'], words: ShopWords): string {
  if (difference === null) return 'It was not read when it was built.';
  const apart = sayAmount(Math.abs(difference), check, words, false);
  if (/^[0.,]+$/.test(apart)) return 'As built.';
  const by = `${apart} ${difference < 0 ? 'less' : 'more'} than built`;
  if (says === 'not known') return `${by}; how sure that is, is not known.`;
  return says === 'no more than the readings can explain'
    ? `${by}: no more than the readings can explain.`
    : `${by}: more than the readings can explain.`;
}

/** Each part as teardown found it, in order, with what is gone of it. */
export function foundParts(findings: readonly Finding[], words: ShopWords): FoundPart[] {
  return findings.map((finding) => {
    const gone = goneOf(finding);
    return {
      words: partWords(finding),
      condition: conditionWords(finding, words),
      gone: gone === null ? '' : `${sayLength(gone, words)} gone`,
      note: finding.note,
    };
  });
}

/**
 * For each pack with measured plates: what they lost against their nominal height, beside what its clearance gained. Wear
 * of the plates is room in the pack, so the two should agree when every plate was measured.
 */
export function wearOfPacks(findings: readonly Finding[], asFound: readonly AsFoundNow[], words: ShopWords): string[] {
  const measured = findings.filter((finding) => finding.packName !== null && goneOf(finding) !== null);
  return [...Map.groupBy(measured, ({ packName }) => packName ?? '')].map(([packName, plates]) => {
    const gone = plates.reduce((sum, plate) => sum + (goneOf(plate) ?? 0), 0);
    const count = plates.length === 1 ? 'the plate' : `the ${plates.length} plates`;
    const clearance = asFound.find((each) => each.telling === 'clearance' && each.packName === packName);
    const change = clearance?.difference ?? null;
    const grew =
      change === null
        ? 'its clearance was not read both times'
        : `its clearance is ${sayLength(Math.abs(change), words)} ${change < 0 ? 'less' : 'more'} than built`;
    return `${packName}: ${sayLength(gone, words)} gone from ${count} measured; ${grew}.`;
  });
}

function goneOf({ thickness_nm, nominal_nm }: Finding): number | null {
  return thickness_nm === null || nominal_nm === null ? null : nominal_nm - thickness_nm;
}

function sayLength(length_nm: number, words: ShopWords): string {
  return sayAmount(length_nm, { unit: 'thou' }, words);
}
