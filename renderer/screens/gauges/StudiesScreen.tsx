// The repeat tests of the shop: what is under way, and what each finished one came to.
import { Link, useNavigate } from '@tanstack/react-router';
import { useCallback } from 'react';
import type { StudyHead } from '../../../app/gauges/studies.contract.ts';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { GaugesTabs } from '../../frame/GaugesTabs.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { PageHead } from '../../frame/PageHead.tsx';
import { useLetterKey } from '../../frame/use-letter-key.ts';
import { useRead } from '../../rpc/use-read.ts';
import { sayDay } from '../../text/say-date.ts';
import styles from './Gauges.module.css';
import { methodNames } from './method-words.ts';

export function StudiesScreen() {
  const studies = useRead('gauges.listStudies', {});
  const navigate = useNavigate();
  useLetterKey(
    'n',
    useCallback(() => void navigate({ to: '/gauges/studies/new' }), [navigate]),
  );
  return (
    <>
      <GaugesTabs />
      <PageHead
        title="Repeat tests"
        acts={
          <LinkKey to="/gauges/studies/new" kind="filled" keyHint="N">
            New test
          </LinkKey>
        }
      />
      <Loaded read={studies}>{(all) => <Studies studies={all} />}</Loaded>
    </>
  );
}

function Studies({ studies }: { studies: readonly StudyHead[] }) {
  if (studies.length === 0) {
    return (
      <EmptyState level={2} title="No repeat test yet.">
        Two or more people read the same parts several times, in an order drawn by lot. It shows how much of what
        differs is the parts and how much is the hand. Press N to begin one.
      </EmptyState>
    );
  }
  return (
    <section className={styles.section} aria-label="Repeat tests">
      <Table label="Repeat tests">
        <thead>
          <tr>
            <ColumnHead>test</ColumnHead>
            <ColumnHead>read by</ColumnHead>
            <ColumnHead isWide>gauge</ColumnHead>
            <ColumnHead>hands</ColumnHead>
            <ColumnHead isNumber>parts</ColumnHead>
            <ColumnHead isNumber>times</ColumnHead>
            <ColumnHead>begun</ColumnHead>
            <ColumnHead>stands at</ColumnHead>
          </tr>
        </thead>
        <tbody>
          {studies.map((study) => (
            <tr key={study.studyId}>
              <RowHead>
                <Link to="/gauges/studies/$studyId" params={{ studyId: String(study.studyId) }}>
                  {study.name}
                </Link>
              </RowHead>
              <Cell>{methodNames[study.method]}</Cell>
              <Cell isWide isQuiet>
                {study.gauge?.tag ?? 'none named'}
              </Cell>
              <Cell>{study.people.map(({ initials }) => initials).join(', ')}</Cell>
              <Cell isNumber>{study.parts.length}</Cell>
              <Cell isNumber>{study.trials}</Cell>
              <Cell>{sayDay(study.startedAt)}</Cell>
              <Cell isStrong={study.taken < study.outOf}>
                {study.taken === study.outOf ? 'finished' : `${study.taken} of ${study.outOf} read`}
              </Cell>
            </tr>
          ))}
        </tbody>
      </Table>
    </section>
  );
}
