// The board: open jobs by the stage they are in, found by any fragment of what is known of them.
import { Link, useNavigate } from '@tanstack/react-router';
import { useCallback } from 'react';
import type { JobLine } from '../../../app/jobs/jobs.contract.ts';
import type { Stage } from '../../../app/jobs/stages.contract.ts';
import { Button } from '../../components/Button.tsx';
import { Checkbox } from '../../components/Checkbox.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useKeptView } from '../../frame/kept-view.ts';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { useLetterKey } from '../../frame/use-letter-key.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { JobsBoard } from './JobsBoard.tsx';
import styles from './JobsScreen.module.css';

export function JobsScreen() {
  const { file } = useOpenShop();
  const [{ text, includeClosed }, narrow] = useKeptView(`jobs of ${file}`, { text: '', includeClosed: false });
  const navigate = useNavigate();
  const stages = useRead('jobs.listStages', {});
  const jobs = useRead('jobs.listJobs', { text, includeClosed }, { keepsLast: true });
  const families = useRead('specs.listFamilies', {});
  const { person } = useAtBench();
  const move = useWrite('jobs.moveToStage');
  const moveOn = (job: JobLine, to: Stage) => {
    // Closing is said plainly first, on the ticket.
    if (to.isClosed) void navigate({ to: '/jobs/$jobId', params: { jobId: String(job.jobId) } });
    else if (!move.isPending) move.mutate({ jobId: job.jobId, stageId: to.stageId, by: person.personId });
  };
  useLetterKey(
    'n',
    useCallback(() => void navigate({ to: '/jobs/new' }), [navigate]),
  );
  return (
    <>
      <PageHead
        title="Jobs"
        acts={
          <LinkKey to="/jobs/new" kind={families.data?.length === 0 ? 'plain' : 'filled'} keyHint="N">
            Check a unit in
          </LinkKey>
        }
      />
      <search className={styles.search}>
        <div className={styles.find}>
          <TextField
            label="Find a job by anything written down of it"
            type="search"
            maxLength={200}
            value={text}
            onChange={(typed) => narrow({ text: typed, includeClosed })}
          />
        </div>
        <Checkbox isSelected={includeClosed} onChange={(isOn) => narrow({ text, includeClosed: isOn })}>
          Closed ones too
        </Checkbox>
      </search>
      {move.error && move.variables && (
        <div className={styles.refused}>
          <FailureSentence error={move.error} />{' '}
          <Link to="/jobs/$jobId" params={{ jobId: String(move.variables.jobId) }}>
            Open the job
          </Link>
        </div>
      )}
      <Loaded read={stages}>
        {(order) => (
          <Loaded read={jobs}>
            {(lines) =>
              lines.length > 0 ? (
                <JobsBoard stages={order} jobs={lines} onMove={moveOn} />
              ) : (
                <NothingHere
                  text={text.trim()}
                  includeClosed={includeClosed}
                  onIncludeClosed={() => narrow({ text, includeClosed: true })}
                />
              )
            }
          </Loaded>
        )}
      </Loaded>
    </>
  );
}

type NothingHereProps = { text: string; includeClosed: boolean; onIncludeClosed: () => void };

function NothingHere({ text, includeClosed, onIncludeClosed }: NothingHereProps) {
  const families = useRead('specs.listFamilies', {});
  if (text !== '') {
    return (
      <EmptyState
        level={2}
        title={includeClosed ? `No job holds “${text}”.` : `No open job holds “${text}”.`}
        act={!includeClosed && <Button onPress={onIncludeClosed}>Look among closed ones too</Button>}
      >
        Part of a word is enough; try fewer letters.
      </EmptyState>
    );
  }
  return (
    <Loaded read={families}>
      {(known) =>
        known.length === 0 ? (
          <EmptyState
            level={2}
            title="First a unit family, then the first job."
            act={
              <LinkKey to="/specs" kind="filled">
                Start a family in Specs
              </LinkKey>
            }
          >
            A family says which packs a unit has and what to measure on it; every job is checked in under one.
          </EmptyState>
        ) : (
          <EmptyState level={2} title={includeClosed ? 'No jobs yet.' : 'No open jobs.'}>
            Press N, or <Link to="/jobs/new">check a unit in</Link>: customer, unit, what it does and when.
          </EmptyState>
        )
      }
    </Loaded>
  );
}
