// What teardown found, on the build report: for the customer in plain words, for the shop's folder in full.

import { conditionWords, decisionWords, doneWords, partWords, plainCondition } from '../jobs/finding-words.ts';
import type { Finding } from '../jobs/findings.contract.ts';
import type { BuildReportFacts } from './build-report-facts.ts';
import type { Block, Cell, Words } from './paper.ts';

const cell = (...words: readonly Words[]): Cell => ({ kind: 'words', words });

/** Nothing where nothing was written down. */
export function foundAtTeardown(facts: BuildReportFacts): readonly Block[] {
  const { findings, copy } = facts;
  if (findings.length === 0) return [];
  return [{ kind: 'heading', text: 'Found at teardown' }, copy === 'shop' ? inFull(facts) : inPlainWords(findings)];
}

function inPlainWords(findings: readonly Finding[]): Block {
  return {
    kind: 'table',
    columns: [
      { heading: 'part', align: 'start', width: 'rest' },
      { heading: 'found', align: 'start', width: 'content' },
      { heading: 'what was done', align: 'start', width: 'content' },
    ],
    rows: findings.map((finding) => ({
      kind: 'row',
      cells: [
        cell({ text: partWords(finding) }),
        cell({ text: plainCondition[finding.condition] }),
        cell({ text: doneWords[finding.decision.decision] }),
      ],
    })),
  };
}

function inFull({ findings, ...lengths }: BuildReportFacts): Block {
  return {
    kind: 'table',
    columns: [
      { heading: 'part', align: 'start', width: 'rest' },
      { heading: 'found', align: 'start', width: 'content' },
      { heading: 'decision', align: 'start', width: 'content' },
      { heading: 'by', align: 'start', width: 'content' },
    ],
    rows: findings.map((finding) => {
      const { note, decision, by } = finding;
      return {
        kind: 'row',
        cells: [
          cell({ text: partWords(finding) }, ...(note === '' ? [] : [{ text: `, ${note}`, quiet: true }])),
          cell({ text: conditionWords(finding, lengths) }),
          cell({ text: decisionWords[decision.decision] }),
          cell({ text: by === decision.by ? by : `${by}, ${decision.by}` }),
        ],
      };
    }),
  };
}
