// The checks of a build report as tables, and the one sentence that sums them up.
import { type AmountWords, type Limits, unitWords } from '../charts/amounts.ts';
import { bandRow } from '../charts/band-row.ts';
import { type Chart, text } from '../charts/shapes.ts';
import { type Verdict, verdictRole, verdictWords } from '../charts/verdict-mark.ts';
import { shownUnit, unitNamed } from '../quantities/units.ts';
import type { BuildReportFacts, CheckFacts } from './build-report-facts.ts';
import type { Block, Cell, Column, Row, Table } from './paper.ts';

const bandSize = { width: 102, height: 12.5, medium: 'paper' } as const;

/** The words for a check's amounts: lengths set in thou or mm in the shop's unit, all else in the unit it was set in. */
export function wordsOf(check: Pick<CheckFacts, 'unit'>, facts: BuildReportFacts): AmountWords {
  return unitWords(unitOf(check, facts), facts.decimalMark);
}

/** The unit a check's figures are written in. */
export function unitOf({ unit }: Pick<CheckFacts, 'unit'>, facts: BuildReportFacts): string {
  return shownUnit(unit, facts.lengthUnit);
}

/** What the shop's unit is, said once at the head of the column. */
export function unitInWords(facts: BuildReportFacts): string {
  return facts.lengthUnit === 'thou' ? 'thou = 0.001 in' : 'mm';
}

/** "20–30", "at least 1.0", both limits with the same decimals; empty where none is set. */
export function limitsText({ low, high }: Limits, words: AmountWords): string {
  const decimals = (figure: string) => /[.,](\d+)$/.exec(figure)?.[1]?.length ?? 0;
  const set = [low, high].filter((each) => each !== null);
  const wanted = Math.max(0, ...set.map((each) => decimals(words.short(each))));
  const figure = (amount: number) => {
    const full = words.full(amount);
    const extra = decimals(full) - wanted;
    return wanted === 0 ? words.short(amount) : full.slice(0, full.length - extra);
  };
  if (low !== null && high !== null) return `${figure(low)}–${figure(high)}`;
  if (low !== null) return `≥ ${figure(low)}`;
  return high === null ? '' : `≤ ${figure(high)}`;
}

/** The word of a check's verdict; a pressure is low or high where a clearance is tight or loose. */
export function verdictText(check: CheckFacts, facts: BuildReportFacts): string {
  if (check.verdict === 'not judged' && check.variantName !== null) return check.variantName;
  const by = check.by === null ? null : wordsOf(check, facts).full(check.by);
  return verdictWords(shownVerdict(check), by);
}

export function shownVerdict({ verdict, unit }: CheckFacts): Verdict {
  if (unitNamed(unit).quantity === 'length') return verdict;
  if (verdict === 'tight') return 'low';
  return verdict === 'loose' ? 'high' : verdict;
}

/** "All 13 measured checks are in.", or how many are out, too close to call and not read. */
export function summary(facts: BuildReportFacts): Block {
  const role = (check: CheckFacts) => verdictRole(check.verdict);
  const isRead = (check: CheckFacts) => check.final !== null || check.asFound !== null;
  const out = facts.checks.filter((check) => role(check) === 'out');
  const close = facts.checks.filter((check) => role(check) === 'close');
  const inside = facts.checks.filter((check) => role(check) === 'in');
  const notRead = facts.checks.filter((check) => role(check) === 'quiet' && !isRead(check));
  const measured = out.length + close.length + inside.length;
  const overrides = facts.checks.filter((check) => check.override !== null).length;
  const clauses: string[] = [];
  if (out.length > 0) {
    const ofAll = measured === 1 ? 'The one measured check' : `${out.length} of ${measured} measured checks`;
    clauses.push(`${ofAll} ${isOrAre(out.length)} out`);
  }
  if (close.length > 0) {
    const ofAll = out.length > 0 ? '' : ` of ${measured} measured checks`;
    clauses.push(`${close.length}${ofAll} ${isOrAre(close.length)} too close to call`);
  }
  if (clauses.length === 0 && measured > 0) {
    clauses.push(measured === 1 ? 'The one measured check is in' : `All ${measured} measured checks are in`);
  }
  if (notRead.length > 0) clauses.push(`${notRead.length} ${isOrAre(notRead.length)} not read`);
  const standing =
    overrides === 0
      ? []
      : [`${overrides} ${overrides === 1 ? 'stands as it is' : 'stand as they are'} by decision of the shop`];
  const asides = [...(out.length > 0 ? [`Out: ${out.map((check) => check.name).join(', ')}`] : []), ...standing];
  return {
    kind: 'verdict',
    verdict:
      out.length > 0
        ? 'loose'
        : close.length > 0
          ? 'too close to call'
          : notRead.length > 0 || measured === 0
            ? 'not read'
            : 'in',
    sentence: clauses.length === 0 ? 'Nothing has been measured.' : `${clauses.join(', ')}.`,
    aside: asides.length === 0 ? '' : `${asides.join('. ')}.`,
  };
}

function isOrAre(count: number): string {
  return count === 1 ? 'is' : 'are';
}

/** Checks that are lengths in the shop's unit, one unit for the whole table; empty where there are none. */
export function lengthTable(facts: BuildReportFacts): readonly Table[] {
  const checks = facts.checks.filter((check) => unitOf(check, facts) === facts.lengthUnit);
  const columns = columnsOf(unitInWords(facts));
  const rows = grouped(checks, (check) => check.group).flatMap(([group, members]) => {
    const methods = new Set(members.map((check) => check.method).filter((each) => each !== ''));
    const shared = methods.size === 1 ? `, ${[...methods][0]}` : '';
    // Where a group was read in several ways, each of its lines says its own.
    const saidInLine = (check: CheckFacts): CheckFacts =>
      methods.size > 1 && check.method !== '' ? { ...check, name: `${check.name}, ${check.method}` } : check;
    const lines = members.map((check) => rowOf(saidInLine(check), facts));
    return [{ kind: 'group', text: `${group}${shared}` } as const, ...lines];
  });
  return checks.length === 0 ? [] : [{ kind: 'table', columns, rows }];
}

/** Everything else: each group says its own unit. */
export function otherTable(facts: BuildReportFacts): readonly Table[] {
  const checks = facts.checks.filter((check) => unitOf(check, facts) !== facts.lengthUnit);
  const heading = ({ group, unit }: CheckFacts) => (unit === '' ? group : `${group}, ${unit}`);
  const rows = grouped(checks, heading).flatMap(([group, members]) => [
    { kind: 'group', text: group } as const,
    ...members.map((check) => rowOf(check, facts)),
  ]);
  return checks.length === 0 ? [] : [{ kind: 'table', columns: columnsOf(''), rows }];
}

function grouped(
  checks: readonly CheckFacts[],
  key: (check: CheckFacts) => string,
): ReadonlyArray<readonly [string, readonly CheckFacts[]]> {
  const groups = new Map<string, CheckFacts[]>();
  for (const check of checks) groups.set(key(check), [...(groups.get(key(check)) ?? []), check]);
  return [...groups];
}

function columnsOf(unit: string): readonly Column[] {
  return [
    { heading: unit, align: 'start', width: 'rest' },
    { heading: 'target', align: 'decimal', width: 'content' },
    { heading: 'limits', align: 'end', width: 'content' },
    { heading: 'as found', align: 'decimal', width: 'content' },
    { heading: 'as built', align: 'decimal', width: 'content' },
    { heading: '', align: 'decimal', width: 'content' },
    { heading: bandHeading(), align: 'start', width: bandSize.width },
    { heading: '', align: 'start', width: 'content' },
  ];
}

/** Says where the limits of every row's band lie. */
function bandHeading(): Chart {
  const label = (share: number, word: string) =>
    text(share * bandSize.width, 8, word, { anchor: 'middle', role: 'quiet' });
  return {
    medium: 'paper',
    width: bandSize.width,
    height: 10,
    title: '',
    shapes: [label(0.214, 'low'), label(0.786, 'high')],
  };
}

function rowOf(check: CheckFacts, facts: BuildReportFacts): Row {
  const words = wordsOf(check, facts);
  const { final, asFound, target, limits } = check;
  const figure = (figureText: string, strong = false): Cell => ({
    kind: 'words',
    words: [{ text: figureText, strong }],
  });
  const expanded = final?.expanded ?? null;
  const now = final === null ? null : { ...final, label: 'as built' };
  const note = noteOf(check, facts);
  const hasBand = limits.low !== null || limits.high !== null || target !== null;
  return {
    kind: 'row',
    cells: [
      { kind: 'words', words: [{ text: check.name }, { text: spotsText(check, words), quiet: true }] },
      figure(target === null ? '' : words.short(target)),
      figure(limitsText(limits, words)),
      figure(asFound === null ? '' : words.full(asFound.value)),
      figure(final === null ? '' : words.full(final.value), true),
      figure(expanded === null ? '' : `± ${words.full(expanded)}`),
      hasBand
        ? { kind: 'chart', chart: bandRow({ limits, target, now, asFound: asFound?.value ?? null }, words, bandSize) }
        : figure(''),
      { kind: 'verdict', verdict: shownVerdict(check), text: verdictText(check, facts) },
    ],
    ...(note === '' ? {} : { note }),
  };
}

/** ", 4 spots 25 to 27" where it was read around the drum. */
function spotsText({ final }: CheckFacts, words: AmountWords): string {
  if (final === null || final.spots < 2) return '';
  return `, ${final.spots} spots ${words.short(final.min)} to ${words.short(final.max)}`;
}

/** What stands under a row: who let it stand and, on the shop's copy, why; what was done; how often it was misread. */
function noteOf({ override, note, supersededCount }: CheckFacts, { copy }: BuildReportFacts): string {
  const parts: string[] = [];
  if (override !== null) {
    parts.push(
      copy === 'shop'
        ? `Stands as it is, ${override.by}: ${override.reason}`
        : 'Stands as it is by decision of the shop',
    );
  }
  if (copy === 'shop' && note !== '') parts.push(note);
  if (copy === 'shop' && supersededCount > 0) {
    parts.push(`${supersededCount} ${supersededCount === 1 ? 'reading was' : 'readings were'} misread and read again`);
  }
  return parts.join('. ');
}
