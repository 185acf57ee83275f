// Whom to call: units that share something with one that came back or was found out, and what came of each call.
import { Link, useNavigate } from '@tanstack/react-router';
import { useCallback, useState } from 'react';
import { callStanding, cameBackWords, isSettled, usedSoFar, warrantyToday } from '../../../app/comebacks/call-words.ts';
import { type CameOfCall, cameOfCalls, type UnitToCall } from '../../../app/comebacks/calls.contract.ts';
import { Button } from '../../components/Button.tsx';
import { Disclosure } from '../../components/Disclosure.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { SaveKey } from '../../frame/SaveKey.tsx';
import { useLetterKey } from '../../frame/use-letter-key.ts';
import { call } from '../../rpc/client.ts';
import { Refused, refusalAbout } from '../../rpc/failures.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { sayBusinessDay } from '../../text/part-words.ts';
import { sayDay, today } from '../../text/say-date.ts';
import styles from './Comebacks.module.css';
import { ComebacksTabs } from './ComebacksTabs.tsx';
import { daysInService } from './comeback-words.ts';

export function WhoToCallScreen() {
  const units = useRead('comebacks.listToCall', {});
  const navigate = useNavigate();
  useLetterKey(
    'n',
    useCallback(() => void navigate({ to: '/comebacks/sharing' }), [navigate]),
  );
  const hasSome = (units.data ?? []).length > 0;
  return (
    <>
      <ComebacksTabs />
      <PageHead
        title="Who to call"
        acts={
          <>
            {hasSome && <SaveKey get={() => call('comebacks.exportToCall', {})}>Save as CSV</SaveKey>}
            {hasSome && <LinkKey to="/comebacks/calls/paper">Print</LinkKey>}
            <LinkKey to="/comebacks/sharing" kind="filled" keyHint="N">
              What do they share?
            </LinkKey>
          </>
        }
      />
      <Loaded read={units}>{(known) => (known.length === 0 ? <NobodyYet /> : <CallList units={known} />)}</Loaded>
    </>
  );
}

function NobodyYet() {
  return (
    <EmptyState level={2} title="Nobody has to be called.">
      Here units are called in before they come back: press N, or{' '}
      <Link to="/comebacks/sharing">ask what they share</Link> with one that failed, and put them on the list.
    </EmptyState>
  );
}

function CallList({ units }: { units: readonly UnitToCall[] }) {
  const open = units.filter((unit) => !isSettled(unit));
  const settled = units.filter(isSettled);
  return (
    <section className={styles.section} aria-label="Who to call">
      {open.length === 0 ? (
        <p className={styles.sentence}>Everybody on the list was called and looked at.</p>
      ) : (
        <UnitsTable label="To be called" units={open} />
      )}
      {settled.length > 0 && (
        <Disclosure words={settled.length === 1 ? '1 settled' : `${settled.length} settled`}>
          <UnitsTable label="Settled" units={settled} />
        </Disclosure>
      )}
    </section>
  );
}

function UnitsTable({ label, units }: { label: string; units: readonly UnitToCall[] }) {
  return (
    <Table label={label}>
      <thead>
        <tr>
          <ColumnHead>job</ColumnHead>
          <ColumnHead>customer</ColumnHead>
          <ColumnHead>why</ColumnHead>
          <ColumnHead>what to check</ColumnHead>
          <ColumnHead>in service</ColumnHead>
          <ColumnHead>stands</ColumnHead>
          <ColumnHead />
        </tr>
      </thead>
      <tbody>
        {units.map((unit) => (
          <UnitRow key={unit.unitToCallId} unit={unit} />
        ))}
      </tbody>
    </Table>
  );
}

function UnitRow({ unit }: { unit: UnitToCall }) {
  const { decimalMark } = useOpenShop().settings;
  const writing = { decimalMark, sayDay: sayBusinessDay };
  const { build } = unit;
  const cameBack = cameBackWords(build, sayBusinessDay);
  return (
    <tr className={styles.tall}>
      <RowHead>
        <Link className={styles.whole} to="/jobs/$jobId" params={{ jobId: String(build.jobId) }}>
          Job {build.number}
        </Link>
        <span className={styles.beneath}>{`${build.unit.familyName} ${build.unit.serial}`.trim()}</span>
      </RowHead>
      <Cell>
        {build.customer.name}
        <span className={styles.beneath}>
          {[build.customer.phone, build.customer.email].filter(Boolean).join(', ') || 'no phone number'}
        </span>
      </Cell>
      <Cell>
        {unit.what}
        <span className={styles.beneath}>{unit.reason}</span>
      </Cell>
      <Cell>{unit.whatToCheck || <span className="quiet">not said</span>}</Cell>
      <Cell>
        {daysInService(build.service)}
        <span className={styles.beneath}>{usedSoFar(build, writing)}</span>
        <span className={styles.beneath}>{cameBack || warrantyToday(build, today(), writing)}</span>
      </Cell>
      <Cell isStrong={unit.calls.length === 0}>
        {callStanding(unit)}
        {unit.calls.map((each) => (
          <span key={each.at} className={styles.beneath}>
            {[sayDay(each.at), each.by, each.cameOfIt, each.note].filter(Boolean).join(', ')}
          </span>
        ))}
      </Cell>
      <Cell isNumber>
        <PopoverDialog
          words="Call"
          title={`Call about job ${build.number}`}
          aria-label={`Call about job ${build.number}`}
        >
          {(close) => <CallForm unitToCallId={unit.unitToCallId} onDone={close} />}
        </PopoverDialog>
      </Cell>
    </tr>
  );
}

function CallForm({ unitToCallId, onDone }: { unitToCallId: number; onDone: () => void }) {
  const { person } = useAtBench();
  const write = useWrite('comebacks.noteCall');
  const [cameOfIt, setCameOfIt] = useState<CameOfCall>('reached');
  const [note, setNote] = useState('');
  const keep = () => {
    if (write.isPending) return;
    write.mutate({ unitToCallId, cameOfIt, note, by: person.personId }, { onSuccess: onDone });
  };
  return (
    <EnterThrough label="What came of the call" onFinish={keep} className={styles.popover}>
      <RadioGroup
        label="What came of it"
        options={cameOfCalls.map((id) => ({ id, words: id }))}
        value={cameOfIt}
        onChange={setCameOfIt}
      />
      <TextField
        label="Note"
        value={note}
        onChange={setNote}
        refusal={refusalAbout('note', write.error)}
        maxLength={200}
        autoFocus
      />
      <Button type="submit" kind="filled" keyHint="Enter" isPending={write.isPending}>
        Write it down
      </Button>
      {!(write.error instanceof Refused && write.error.field) && <FailureSentence error={write.error} />}
    </EnterThrough>
  );
}
