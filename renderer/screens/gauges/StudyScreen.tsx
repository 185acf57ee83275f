// One repeat test: while it runs what to read next, and what it says once every reading is in.
import { useState } from 'react';
import type { Study } from '../../../app/gauges/studies.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { EntryLine } from '../../components/EntryLine.tsx';
import { Notice } from '../../components/Notice.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { GaugesTabs } from '../../frame/GaugesTabs.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { refusalAbout } from '../../rpc/failures.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './Gauges.module.css';
import { methodWords } from './method-words.ts';
import { StudyResults } from './StudyResults.tsx';

export function StudyScreen({ studyId }: { studyId: number }) {
  const study = useRead('gauges.getStudy', { studyId });
  return (
    <>
      <GaugesTabs />
      <Loaded read={study}>{(known) => <StudyPage study={known} />}</Loaded>
    </>
  );
}

function StudyPage({ study }: { study: Study }) {
  const { gauge, method, people, parts, trials, taken, outOf, next } = study;
  const hands = people.map(({ initials }) => initials).join(', ');
  return (
    <>
      <PageHead
        title={study.name}
        facts={
          <>
            <span>{`${methodWords[method]}${gauge ? ` with ${gauge.tag}` : ''}`}</span>
            <span className="quiet">{`${parts.length} parts, ${hands}, ${trials} times each`}</span>
            {next && <span>{`${taken} of ${outOf} read`}</span>}
          </>
        }
      />
      {next ? <NextRead key={next.place} study={study} next={next} /> : <StudyResults study={study} />}
    </>
  );
}

const lineWords = { air: 'push-down + air travel', dial: 'play on the dial', direct: 'reading' };

function NextRead({ study, next }: { study: Study; next: NonNullable<Study['next']> }) {
  const { settings } = useOpenShop();
  const { person } = useAtBench();
  const [isMisread, setMisread] = useState(false);
  const typed = useDraft(`repeat test ${study.studyId}, place ${next.place}`, '');
  const write = useWrite('gauges.recordStudyRead');
  const commit = (line: string) =>
    write.mutate(
      { studyId: study.studyId, place: next.place, typed: line, by: person.personId },
      { onSuccess: typed.clear },
    );
  const hand = study.people.find(({ initials }) => initials === next.initials)?.name ?? next.initials;
  const isNewHand = study.before !== null && study.before.initials !== next.initials;
  return (
    <section className={styles.section} aria-label="What to read next">
      {isNewHand && <Notice>{`Hand over: ${hand} reads now.`}</Notice>}
      <p className={styles.prompt}>
        <span className="say">{hand}</span> reads <span className="say">{next.part}</span>
        <span className="quiet">{`round ${next.round} of ${study.trials}`}</span>
      </p>
      <EntryLine
        label={`${lineWords[study.method]}, ${settings.lengthUnit}`}
        value={typed.value}
        onChange={typed.change}
        onCommit={commit}
        refusal={refusalAbout('typed', write.error)}
        isCommitting={write.isPending}
      />
      {refusalAbout('typed', write.error) === null && <FailureSentence error={write.error} />}
      <p className={styles.aside}>
        What was read before is not shown until the last reading is in. It can be left here and taken up again.
      </p>
      {study.before &&
        (isMisread ? (
          <MisreadForm study={study} before={study.before} onLeave={() => setMisread(false)} />
        ) : (
          <Button onPress={() => setMisread(true)}>{`The one before was misread`}</Button>
        ))}
    </section>
  );
}

function MisreadForm({
  study,
  before,
  onLeave,
}: {
  study: Study;
  before: NonNullable<Study['before']>;
  onLeave: () => void;
}) {
  const { settings } = useOpenShop();
  const { person } = useAtBench();
  const write = useWrite('gauges.supersedeStudyRead');
  const [typed, setTyped] = useState('');
  const [reason, setReason] = useState('');
  const save = () =>
    write.mutate(
      { studyId: study.studyId, place: before.place, typed, reason, by: person.personId },
      { onSuccess: onLeave },
    );
  return (
    <EnterThrough label="Put a misread reading right" onFinish={save} className={styles.form}>
      <div className={styles.line}>
        <div className={styles.some}>
          <TextField
            label={`${before.part} as ${before.initials} read it, round ${before.round}`}
            unit={settings.lengthUnit}
            value={typed}
            onChange={setTyped}
            refusal={refusalAbout('typed', write.error)}
            autoFocus
          />
        </div>
        <div className={styles.much}>
          <TextField
            label="What was misread"
            value={reason}
            onChange={setReason}
            refusal={refusalAbout('reason', write.error)}
          />
        </div>
      </div>
      <div className={styles.line}>
        <Button type="submit" kind="filled" isPending={write.isPending}>
          Put this in its place
        </Button>
        <Button onPress={onLeave}>Leave it</Button>
      </div>
    </EnterThrough>
  );
}
