// What the whole fleet says: how long builds last, how many of each quarter came back, and what goes together with it.
import type { FleetAnswer, FleetSelection } from '../../../app/comebacks/fleet.contract.ts';
import type { FleetProgress } from '../../../app/comebacks/fleet-progress.ts';
import { Button } from '../../components/Button.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useKeptView } from '../../frame/kept-view.ts';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { useFleet } from '../../rpc/use-fleet.ts';
import { useRead } from '../../rpc/use-read.ts';
import shared from './Comebacks.module.css';
import { ComebacksTabs } from './ComebacksTabs.tsx';
import styles from './Fleet.module.css';
import { FleetChoice, wholeFamily } from './FleetChoice.tsx';
import { ComparedGroups, RateByQuarter, SurvivalOfFleet } from './FleetCurves.tsx';
import { FleetFactors } from './FleetFactors.tsx';
import { followedSentences } from './fleet-words.ts';

export function FleetScreen() {
  const { file } = useOpenShop();
  const [kept, keep] = useKeptView<FleetSelection | null>(`fleet of ${file}`, null);
  const families = useRead('comebacks.fleetChoices', { familyId: null });
  return (
    <>
      <ComebacksTabs />
      <PageHead title="Fleet" />
      <Loaded read={families}>
        {({ families: some }) => {
          const largest = some.toSorted((a, b) => b.builds - a.builds)[0];
          if (!largest) {
            return (
              <EmptyState level={2} title="No build was delivered yet.">
                Once units are handed over, here stands how long they last and what those that come back have in common.
              </EmptyState>
            );
          }
          return <FleetOfFamily selection={kept ?? wholeFamily(largest.id)} onChange={keep} />;
        }}
      </Loaded>
    </>
  );
}

function FleetOfFamily({
  selection,
  onChange,
}: {
  selection: FleetSelection;
  onChange: (selection: FleetSelection) => void;
}) {
  const { familyId } = selection;
  const { read, progress, stop } = useFleet(selection);
  // Who built is known once their figures are there, so what can be chosen is looked up again with the answer.
  const choices = useRead('comebacks.fleetChoices', { familyId }, { keepsLast: true });
  return (
    <Loaded read={choices}>
      {(known) => (
        <>
          <FleetChoice choices={known} groups={read.data?.groups ?? []} selection={selection} onChange={onChange} />
          {read.isFetching && <Running progress={progress} stop={stop} />}
          {read.error && !read.isFetching && (
            <div className={styles.running}>
              <FailureSentence error={read.error} />
              <Button kind="filled" onPress={() => void read.refetch()}>
                Ask again
              </Button>
            </div>
          )}
          {read.data && <Answer answer={read.data} selection={selection} />}
        </>
      )}
    </Loaded>
  );
}

function Running({ progress, stop }: { progress: FleetProgress | null; stop: () => void }) {
  return (
    <div className={styles.running}>
      <p role="status">{progress === null ? 'Asking…' : `Reckoning builds: ${progress.done} of ${progress.of}`}</p>
      {progress !== null && <progress aria-label="Builds reckoned" value={progress.done} max={progress.of} />}
      <Button onPress={stop}>Stop</Button>
    </div>
  );
}

function Answer({ answer, selection }: { answer: FleetAnswer; selection: FleetSelection }) {
  const { decimalMark } = useOpenShop().settings;
  const { survival, compared, factors, quarters } = answer;
  const [first, ...more] = followedSentences(answer, selection.clock, decimalMark);
  return (
    <>
      <section className={shared.section} aria-label="Who was followed">
        <p className={styles.said}>
          <b>{first}</b> {more.join(' ')}
        </p>
        <p className={styles.beneath}>
          How following ended: {answer.endings.map(({ ending, builds }) => `${ending} ${builds}`).join(' · ')}
        </p>
      </section>
      <section className={shared.section} aria-labelledby="fleet-factors">
        <h2 id="fleet-factors">What goes together with coming back</h2>
        {factors.isEnough ? <FleetFactors factors={factors} /> : <p className={styles.said}>{factors.why}</p>}
      </section>
      <section className={shared.section} aria-labelledby="fleet-survival">
        <h2 id="fleet-survival">How long they last</h2>
        {survival.isEnough ? (
          <SurvivalOfFleet curve={survival.curve} wear={answer.wear} clock={selection.clock} />
        ) : (
          <p className={styles.said}>{survival.why}</p>
        )}
      </section>
      {compared && (
        <section className={shared.section} aria-labelledby="fleet-compared">
          <h2 id="fleet-compared">By {selection.groupBy}</h2>
          {compared.isEnough ? (
            <ComparedGroups compared={compared} clock={selection.clock} />
          ) : (
            <p className={styles.said}>{compared.why}</p>
          )}
        </section>
      )}
      {quarters.length > 0 && (
        <section className={shared.section} aria-labelledby="fleet-quarters">
          <h2 id="fleet-quarters">Came back, by quarter of delivery</h2>
          <RateByQuarter quarters={quarters} />
        </section>
      )}
    </>
  );
}
