// The causes of a comeback, each with its place and how sure it is; what was said before stays on record.
import { useState } from 'react';
import { causes, certainties } from '../../../app/comebacks/causes.ts';
import type { CauseSaid, Comeback } from '../../../app/comebacks/log.contract.ts';
import { Button } from '../../components/Button.tsx';
import { Disclosure } from '../../components/Disclosure.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { sayDayAndTime } from '../../text/say-date.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './Comebacks.module.css';
import { causeWords } from './comeback-words.ts';

export function CausesOfComeback({ comeback }: { comeback: Comeback }) {
  const [isOpen, setOpen] = useState(false);
  const { causes: standing, earlierCauses } = comeback;
  return (
    <section className={styles.section} aria-label="Causes">
      <h2>Causes</h2>
      {standing.length === 0 && !isOpen && (
        <p className={styles.sentence}>
          Nobody has said a cause yet: each is known, suspected or looked for and not found.
        </p>
      )}
      {standing.length > 0 && <CausesTable comebackId={comeback.comebackId} causes={standing} />}
      {isOpen ? (
        <CauseForm comeback={comeback} onDone={() => setOpen(false)} />
      ) : (
        <div className={styles.after}>
          <Button onPress={() => setOpen(true)}>Say a cause</Button>
        </div>
      )}
      {earlierCauses.length > 0 && (
        <Disclosure words={earlierCauses.length === 1 ? 'As said before' : `${earlierCauses.length} said before`}>
          <ul className={styles.earlier}>
            {earlierCauses.map((each) => (
              <li key={`${each.at} ${each.cause} ${each.packId}`}>
                {[`${causeWords(each)}: ${each.certainty}`, each.note].filter(Boolean).join(', ')} ({each.by},{' '}
                {sayDayAndTime(each.at)})
              </li>
            ))}
          </ul>
        </Disclosure>
      )}
    </section>
  );
}

function CausesTable({ comebackId, causes }: { comebackId: number; causes: readonly CauseSaid[] }) {
  return (
    <Table label="Causes">
      <thead>
        <tr>
          <ColumnHead>cause</ColumnHead>
          <ColumnHead>where</ColumnHead>
          <ColumnHead>how sure</ColumnHead>
          <ColumnHead />
        </tr>
      </thead>
      <tbody>
        {causes.map((each) => (
          <tr key={`${each.cause} ${each.packId}`} className={styles.tall}>
            <RowHead>
              {each.cause}
              {each.note !== '' && <span className={styles.beneath}>{each.note}</span>}
            </RowHead>
            <Cell>{each.packName ?? 'whole unit'}</Cell>
            <Cell isStrong={each.certainty === 'known'}>
              {each.certainty}
              <span className={styles.beneath}>{each.by}</span>
            </Cell>
            <Cell isNumber>
              <PopoverDialog
                words="Take back"
                title={`Take back: ${causeWords(each)}`}
                aria-label={`Take back: ${causeWords(each)}`}
              >
                {(close) => <TakeBackForm comebackId={comebackId} cause={each} onDone={close} />}
              </PopoverDialog>
            </Cell>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

type TakeBackFormProps = { comebackId: number; cause: CauseSaid; onDone: () => void };

function TakeBackForm({ comebackId, cause, onDone }: TakeBackFormProps) {
  const { person } = useAtBench();
  const write = useWrite('comebacks.takeBackCause');
  const [reason, setReason] = useState('');
  const [isTried, setTried] = useState(false);
  const lacksReason = reason.trim() === '';
  const take = () => {
    setTried(true);
    if (lacksReason || write.isPending) return;
    const { cause: which, packId } = cause;
    write.mutate({ comebackId, cause: which, packId, reason, by: person.personId }, { onSuccess: onDone });
  };
  return (
    <EnterThrough label="Take the cause back" onFinish={take} className={styles.popover}>
      <TextField
        label="Why"
        value={reason}
        onChange={setReason}
        refusal={isTried && lacksReason ? 'Say why; what was said stays on record.' : null}
        maxLength={200}
        autoFocus
      />
      <Button type="submit" kind="filled" keyHint="Enter" isPending={write.isPending}>
        Take it back
      </Button>
      <FailureSentence error={write.error} />
    </EnterThrough>
  );
}

const wholeUnit = 'unit';

type CauseDraft = {
  readonly cause: (typeof causes)[number] | null;
  readonly packId: number | null;
  readonly certainty: (typeof certainties)[number];
  readonly note: string;
};

function CauseForm({ comeback, onDone }: { comeback: Comeback; onDone: () => void }) {
  const { file } = useOpenShop();
  const { person } = useAtBench();
  const write = useWrite('comebacks.sayCause');
  const [isTried, setTried] = useState(false);
  const { comebackId, packs } = comeback;
  const draft = useDraft<CauseDraft>(`cause: ${file}, comeback ${comebackId}`, {
    cause: null,
    packId: null,
    certainty: 'suspected',
    note: '',
  });
  const { cause, packId, certainty, note } = draft.value;
  const change = (more: Partial<CauseDraft>) => draft.change({ ...draft.value, ...more });
  const leave = () => {
    draft.clear();
    onDone();
  };
  const say = () => {
    setTried(true);
    if (cause === null || write.isPending) return;
    write.mutate({ comebackId, cause, packId, certainty, note, by: person.personId }, { onSuccess: leave });
  };
  return (
    <EnterThrough label="Say a cause" onFinish={say} className={styles.form}>
      <RadioGroup
        label="Cause"
        options={causes.map((id) => ({ id, words: id }))}
        value={cause}
        onChange={(chosen) => change({ cause: chosen })}
        refusal={isTried && cause === null ? 'Choose a cause.' : null}
      />
      <RadioGroup
        label="Where"
        options={[
          { id: wholeUnit, words: 'whole unit' },
          ...packs.map(({ packId: id, name }) => ({ id: String(id), words: name })),
        ]}
        value={packId === null ? wholeUnit : String(packId)}
        onChange={(id) => change({ packId: id === wholeUnit ? null : Number(id) })}
      />
      <RadioGroup
        label="How sure"
        options={certainties.map((id) => ({ id, words: id }))}
        value={certainty}
        onChange={(chosen) => change({ certainty: chosen })}
      />
      <div className={styles.full}>
        <TextField label="Note" value={note} onChange={(typed) => change({ note: typed })} maxLength={200} />
      </div>
      <div className={styles.keys}>
        <Button type="submit" kind="filled" keyHint="Enter" isPending={write.isPending}>
          Say it
        </Button>
        <Button onPress={leave}>Leave it</Button>
        <FailureSentence error={write.error} />
      </div>
    </EnterThrough>
  );
}
