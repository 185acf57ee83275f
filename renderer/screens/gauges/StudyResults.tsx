// What a repeat test came to: the sentence, where what differs comes from, and the figures behind it.
import { shareBars } from '../../../app/charts/share-bars.ts';
import type { Study, StudyResult } from '../../../app/gauges/studies.contract.ts';
import { FittedChart } from '../../charts/FittedChart.tsx';
import { Disclosure } from '../../components/Disclosure.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import styles from './Gauges.module.css';
import { methodWords } from './method-words.ts';
import { type GaugeWords, useGaugeWords } from './use-gauge-words.ts';

const names: Record<StudyResult['lines'][number]['source'], string> = {
  part: 'the parts',
  repeatability: 'reading again with the same hand',
  reproducibility: 'whose hand it is',
  interaction: 'hand and part together',
  gauge: 'all of the reading',
  total: 'everything',
};

export function StudyResults({ study }: { study: Study }) {
  const words = useGaugeWords(useOpenShop().settings.lengthUnit);
  const { results } = study;
  if (results === null) {
    return (
      <section className={styles.section}>
        <EmptyState level={2} title="There is nothing to say.">
          {study.why}
        </EmptyState>
      </section>
    );
  }
  const shares = results.lines.filter(({ source }) => source !== 'gauge' && source !== 'total');
  return (
    <>
      <section className={styles.section} aria-label="What it says">
        <p className={styles.said}>{results.sentence}</p>
        <p className={styles.sentence}>
          {`One hand repeats one reading to ${words.bare(results.repeatability.standardDeviation)} ${words.unit} (one standard deviation, ${results.repeatability.degreesOfFreedom} repeats). Readings ${methodWords[study.method]} that begin from now on count these repeats among the shop’s own.`}
        </p>
        <div className={styles.chart}>
          <FittedChart
            draw={(width) =>
              shareBars(
                shares
                  .filter(({ source, share }) => source !== 'interaction' || share > 0)
                  .map(({ source, share }) => ({ name: names[source], share })),
                Math.min(width, 880),
              )
            }
          />
        </div>
        <LinesTable label="Where what differs comes from" lines={results.lines} words={words} />
        <Disclosure words="Why">
          <div className={styles.why}>
            <p>{categoriesWords(results.distinctCategories)}</p>
            <p>{poolingWords(results)}</p>
            {results.byRanges && (
              <>
                <p>The same by averages and ranges, as it is done with pencil and paper:</p>
                <LinesTable label="By averages and ranges" lines={results.byRanges} words={words} />
              </>
            )}
          </div>
        </Disclosure>
      </section>
      <section className={styles.section} aria-label="What was read">
        <h2>What was read</h2>
        <ReadsTable study={study} words={words} />
      </section>
    </>
  );
}

function LinesTable({ label, lines, words }: { label: string; lines: StudyResult['lines']; words: GaugeWords }) {
  const hasBand = lines.some(({ percentTolerance }) => percentTolerance !== null);
  return (
    <Table label={label}>
      <thead>
        <tr>
          <ColumnHead>what differs</ColumnHead>
          <ColumnHead isNumber>of 100</ColumnHead>
          <ColumnHead isNumber>one deviation, {words.unit}</ColumnHead>
          <ColumnHead isNumber>% of the whole spread</ColumnHead>
          {hasBand && <ColumnHead isNumber>% of the band</ColumnHead>}
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <tr key={line.source}>
            <RowHead isStrong={line.source === 'gauge'}>{names[line.source]}</RowHead>
            <Cell isNumber>{Math.round(100 * line.share)}</Cell>
            <Cell isNumber>{words.full(line.standardDeviation)}</Cell>
            <Cell isNumber isStrong={line.source === 'gauge'}>
              {line.percentStudyVariation.toFixed(1)}
            </Cell>
            {hasBand && (
              <Cell isNumber isStrong={line.source === 'gauge'}>
                {line.percentTolerance?.toFixed(1) ?? '–'}
              </Cell>
            )}
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

/** Everybody's readings of each part, round after round. */
function ReadsTable({ study, words }: { study: Study; words: GaugeWords }) {
  const { parts, people, reads } = study;
  const of = (part: string, initials: string) =>
    reads
      .filter((read) => read.part === part && read.initials === initials)
      .toSorted((one, other) => one.round - other.round)
      .map((read) => words.bare(read.amount_nm))
      .join(' · ');
  return (
    <Table label="What was read" density="dense">
      <thead>
        <tr>
          <ColumnHead>part</ColumnHead>
          {people.map(({ personId, initials }) => (
            <ColumnHead key={personId} isNumber>
              {initials}, {words.unit}
            </ColumnHead>
          ))}
        </tr>
      </thead>
      <tbody>
        {parts.map((part) => (
          <tr key={part}>
            <RowHead>{part}</RowHead>
            {people.map(({ personId, initials }) => (
              <Cell key={personId} isNumber>
                {of(part, initials)}
              </Cell>
            ))}
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

function categoriesWords(distinctCategories: number | null): string {
  if (distinctCategories === null) return 'The reading itself shows no variation at all.';
  const told = Math.max(1, Math.floor(distinctCategories));
  return `It tells ${told} distinct ${told === 1 ? 'category' : 'categories'} of these parts apart (1.41 · parts / reading = ${distinctCategories.toFixed(2)}); five and more are usual for a gauge that decides.`;
}

function poolingWords({ isPooled, pInteraction }: StudyResult): string {
  if (pInteraction === null) return 'The trials never differ, so nothing shows whether hand and part act together.';
  const chance = `p = ${pInteraction.toFixed(3)}`;
  return isPooled
    ? `Hands differ no more on one part than on another (${chance}, above 0.25): taken together with reading again. Analysis of variance, crossed, random effects.`
    : `Hands differ more on some parts than on others (${chance}): kept apart. Analysis of variance, crossed, random effects.`;
}
