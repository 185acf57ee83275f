// What to swap in every open pack of a unit at once, and the list of plates to pull for it.
import { Link, useNavigate } from '@tanstack/react-router';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { chanceWords } from '../../../app/packs/chance-words.ts';
import type { SwapOption, UnitPlan } from '../../../app/packs/packs.contract.ts';
import { type PulledPlate, pullList } from '../../../app/packs/pull-list.ts';
import { formatLength } from '../../../app/quantities/format-amount.ts';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useKeptView } from '../../frame/kept-view.ts';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { useRead } from '../../rpc/use-read.ts';
import { BenchPage } from './BenchPage.tsx';
import { keysWhen } from './keys-when.ts';
import { swapLines } from './swap-words.ts';
import styles from './UnitSwapsScreen.module.css';

type Objective = 'sum' | 'largest';
type Way = 'inOrder' | 'together';
type Write = (length_nm: number) => string;

export function UnitSwapsScreen({ jobId }: { jobId: number }) {
  const job = useRead('jobs.getJob', { jobId });
  return <Loaded read={job}>{(found) => <SwapsOfUnit job={found} />}</Loaded>;
}

function SwapsOfUnit({ job }: { job: Job }) {
  const navigate = useNavigate();
  const { file } = useOpenShop();
  const view = `swaps of job ${job.jobId}, ${file}`;
  // Kept for the way back from the pull list.
  const [objective, setObjective] = useKeptView<Objective>(`${view}: objective`, 'sum');
  const [chosen, setWay] = useKeptView<Way | null>(`${view}: way`, null);
  const plan = useRead('packs.planUnit', { jobId: job.jobId, objective });
  const back = () => void navigate({ to: '/bench', search: { unit: job.jobId } });
  const print = () =>
    void navigate({ to: '/bench/$jobId/pull/$way/$objective', params: { jobId: String(job.jobId), way, objective } });
  const found = plan.data ?? null;
  const way = chosen ?? found?.advised ?? 'inOrder';
  return (
    <BenchPage
      job={job}
      title="What to swap, all packs"
      facts={<span className="quiet">What to swap, all packs</span>}
      prompt={
        <>
          <h1 className="say">{plan.isPending ? 'Working it out…' : (found?.advice ?? 'No pack is open.')}</h1>
          {found?.gain && <p>{found.gain}</p>}
        </>
      }
      keys={[
        ...keysWhen(
          (found?.packs ?? []).some((pack) => (pack[way].option?.changes ?? 0) > 0),
          {
            key: 'P',
            words: 'Pull list on paper',
            onPress: print,
          },
        ),
        { key: 'B', words: 'Back to the bench', onPress: back },
      ]}
    >
      <Loaded read={plan}>
        {(loaded) =>
          loaded ? (
            <>
              {loaded.sharing.length > 0 && (
                <div className={styles.ways}>
                  <RadioGroup
                    label="How"
                    size="bench"
                    options={[
                      { id: 'inOrder', words: 'Pack after pack' },
                      { id: 'together', words: 'Shared out together' },
                    ]}
                    value={way}
                    onChange={setWay}
                  />
                  <RadioGroup
                    label="Together, nearest means"
                    size="bench"
                    options={[
                      { id: 'sum', words: 'least off in all' },
                      { id: 'largest', words: 'the farthest pack first' },
                    ]}
                    value={objective}
                    onChange={setObjective}
                  />
                </div>
              )}
              <Packs job={job} plan={loaded} way={way} />
              {way === 'together' &&
                loaded.sharing.map(({ packs, sentence }) => (
                  <p key={packs.join(', ')}>
                    <b>{packs.join(', ')}:</b> {sentence}
                  </p>
                ))}
              <PullList plan={loaded} way={way} />
            </>
          ) : (
            <p>A pack is planned once it is mocked up and read, until its clearance is settled.</p>
          )
        }
      </Loaded>
    </BenchPage>
  );
}

function Packs({ job, plan, way }: { job: Job; plan: UnitPlan; way: Way }) {
  const write = useWrite();
  return (
    <Table label="Every open pack">
      <thead>
        <tr>
          <ColumnHead>pack</ColumnHead>
          <ColumnHead>what leaves, what comes</ColumnHead>
          <ColumnHead isNumber>should read</ColumnHead>
          <ColumnHead isNumber>in the band</ColumnHead>
        </tr>
      </thead>
      <tbody>
        {plan.packs.map((pack) => {
          const { option, problem } = pack[way];
          const checkId = job.checks.find((check) => check.packId === pack.packId)?.checkId;
          return (
            <tr key={pack.packId}>
              <RowHead>
                {checkId === undefined ? (
                  pack.name
                ) : (
                  <Link
                    to="/bench/$jobId/$checkId"
                    params={{ jobId: String(job.jobId), checkId: String(checkId) }}
                    className={styles.pack}
                  >
                    {pack.name}
                  </Link>
                )}
              </RowHead>
              <Cell>
                {option && <Lines option={option} isStop={way === 'inOrder' && problem === null} write={write} />}
                {problem !== null && <span className={styles.line}>{problem}</span>}
              </Cell>
              <Cell isNumber>
                {option && (
                  <span className={styles.figure}>
                    <b>{write(option.predicted_nm)}</b> ±&nbsp;{write(option.expanded_nm)}
                    <span className={styles.quiet}>for {write(pack.target_nm)}</span>
                  </span>
                )}
              </Cell>
              <Cell isNumber>{option?.probabilityInBand == null ? '' : chanceWords(option.probabilityInBand)}</Cell>
            </tr>
          );
        })}
      </tbody>
    </Table>
  );
}

function Lines({ option, isStop, write }: { option: SwapOption; isStop: boolean; write: Write }) {
  if (option.changes === 0) {
    return (
      <span className={styles.line}>
        {isStop ? 'Stop here: as it sits it is as likely in the band as it needs to be.' : 'It keeps its plates.'}
      </span>
    );
  }
  return swapLines(option, write).map((line) => (
    <span key={line} className={styles.line}>
      {line}
    </span>
  ));
}

function PullList({ plan, way }: { plan: UnitPlan; way: Way }) {
  const write = useWrite();
  const { into, out } = pullList(plan, way);
  if (into.length === 0) return null;
  return (
    <div className={styles.pull}>
      <section>
        <h2>Pull list</h2>
        {way === 'together' &&
          plan.sharing.flatMap(({ order }) => order).map((sentence) => <p key={sentence}>{sentence}</p>)}
        <Plates label="Plates to pull" head="goes into" plates={into} write={write} />
      </section>
      <section>
        <h2>What comes out</h2>
        <Plates label="Plates that come out" head="comes out of" plates={out} write={write} />
      </section>
    </div>
  );
}

function Plates({
  label,
  head,
  plates,
  write,
}: {
  label: string;
  head: string;
  plates: readonly PulledPlate[];
  write: Write;
}) {
  return (
    <Table label={label}>
      <thead>
        <tr>
          <ColumnHead>plate</ColumnHead>
          <ColumnHead isNumber>height</ColumnHead>
          <ColumnHead>{head}</ColumnHead>
        </tr>
      </thead>
      <tbody>
        {plates.map((plate) => (
          <tr key={`${plate.packName} ${plate.slotName}`}>
            <RowHead>{plate.label || 'no tag'}</RowHead>
            <Cell isNumber>{write(plate.height_nm)}</Cell>
            <Cell>
              {plate.packName}, {plate.slotName}
            </Cell>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

function useWrite(): Write {
  const { settings } = useOpenShop();
  return (length_nm) => formatLength(length_nm, settings.lengthUnit, undefined, settings.decimalMark);
}
