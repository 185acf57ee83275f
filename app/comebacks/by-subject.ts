// Findings of a trace gathered by what they are about, so that a check speaks once.
import { isUnusual } from './how-unusual.ts';
import type { TraceFinding } from './trace.contract.ts';

export type Subject = {
  readonly name: string;
  /** Its number where it has one, else its most unusual fact. */
  readonly lead: TraceFinding;
  readonly others: readonly TraceFinding[];
  /** The smallest chance of any of its facts; null where none is ranked. */
  readonly least: number | null;
};

/** In the order of their most unusual facts, as the findings come. */
export function bySubject(findings: readonly TraceFinding[]): Subject[] {
  return [...Map.groupBy(findings, ({ subject }) => subject)].map(([name, about]) => {
    const lead = about.find(({ kind }) => kind === 'place') ?? about[0]!;
    const least = about.find(({ p }) => p !== null)?.p ?? null;
    return { name, lead, others: about.filter((each) => each !== lead), least };
  });
}

/** What is read out at once: anything unusual or notable, and in any case the first few that are ranked. */
export function readOutFirst(
  subjects: readonly Subject[],
  atLeast = 5,
): { readonly first: Subject[]; readonly rest: Subject[] } {
  const stands = ({ lead, others }: Subject) => [lead, ...others].some((each) => isUnusual(each) || each.isNotable);
  const isFirst = (subject: Subject, index: number) => stands(subject) || (index < atLeast && subject.least !== null);
  return {
    first: subjects.filter(isFirst),
    rest: subjects.filter((subject, index) => !isFirst(subject, index)),
  };
}
