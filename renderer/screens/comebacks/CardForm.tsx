// Writing anew what a comeback was: outcome, cover, cost. Whatever was known and changes wants a reason.
import { useState } from 'react';
import { outcomes } from '../../../app/comebacks/causes.ts';
import type { Comeback } from '../../../app/comebacks/log.contract.ts';
import { formatMoney } from '../../../app/quantities/money.ts';
import { CoveredEntry, type CoveredTyped } from '../../comebacks/CoveredEntry.tsx';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { TextArea } from '../../components/TextArea.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { Refused, refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './Comebacks.module.css';
import { ReturnEntry } from './ReturnEntry.tsx';
import { distanceTyped, type ReturnDraft, returnRefusals } from './return-draft.ts';

type CardDraft = ReturnDraft &
  CoveredTyped & {
    readonly outcome: (typeof outcomes)[number];
    readonly cost: string;
    readonly note: string;
    readonly reason: string;
  };

export function CardForm({ comeback, onDone }: { comeback: Comeback; onDone: () => void }) {
  const { file, settings } = useOpenShop();
  const { person } = useAtBench();
  const write = useWrite('comebacks.writeCard');
  const [isTried, setTried] = useState(false);
  const { decimalMark } = settings;
  const { comebackId, build, lines_cents } = comeback;
  const draft = useDraft(`card: ${file}, comeback ${comebackId}`, draftOf(comeback, decimalMark));
  const typed = draft.value;
  const change = (more: Partial<CardDraft>) => draft.change({ ...typed, ...more });
  const leave = () => {
    draft.clear();
    onDone();
  };
  const keep = () => {
    setTried(true);
    if (Object.keys(returnRefusals(typed, decimalMark)).length > 0 || write.isPending) return;
    const { distance: _, distanceUnit: __, ...rest } = typed;
    write.mutate(
      { comebackId, ...rest, distance: distanceTyped(typed, decimalMark), by: person.personId },
      { onSuccess: leave },
    );
  };
  const aboutDay = refusalAbout('cameBackOn', write.error);
  const hasField = write.error instanceof Refused && ['cameBackOn', 'cost', 'reason'].includes(write.error.field ?? '');
  return (
    <EnterThrough label="What it was" onFinish={keep} className={styles.form}>
      <RadioGroup
        label="Outcome"
        options={outcomes.map((id) => ({ id, words: id }))}
        value={typed.outcome}
        onChange={(outcome) => change({ outcome })}
        hint={typed.outcome === 'logged by mistake' ? 'It stays on record and counts nowhere.' : undefined}
      />
      <CoveredEntry
        left={build.left}
        now={{ day: typed.cameBackOn, distance: distanceTyped(typed, decimalMark) }}
        value={typed}
        onChange={({ covered, coveredNote }) => change({ covered, coveredNote })}
      />
      <div className={styles.line}>
        <div className={styles.some}>
          <TextField
            label="What it cost the shop"
            inputMode="decimal"
            value={typed.cost}
            onChange={(cost) => change({ cost })}
            refusal={refusalAbout('cost', write.error)}
            hint="Empty where nobody knows yet."
          />
        </div>
        {lines_cents !== null && lines_cents >= 0 && (
          <div className={styles.offer}>
            <Button onPress={() => change({ cost: formatMoney(lines_cents, decimalMark) })}>
              {`Take ${formatMoney(lines_cents, decimalMark)}, what its lines come to`}
            </Button>
          </div>
        )}
      </div>
      <div className={styles.full}>
        <TextArea label="Note" value={typed.note} onChange={(note) => change({ note })} maxLength={4000} />
      </div>
      <ReturnEntry
        value={typed}
        onChange={change}
        refusals={{
          ...(isTried && returnRefusals(typed, decimalMark)),
          ...(aboutDay !== null && { cameBackOn: aboutDay }),
        }}
      />
      <div className={styles.full}>
        <TextField
          label="Why it is changed"
          hint="Where something that stood there before is changed."
          value={typed.reason}
          onChange={(reason) => change({ reason })}
          refusal={refusalAbout('reason', write.error)}
          maxLength={200}
        />
      </div>
      <div className={styles.keys}>
        <Button type="submit" kind="filled" keyHint="Ctrl Enter" isPending={write.isPending}>
          Write it down
        </Button>
        <Button onPress={leave}>Leave it</Button>
        {!hasField && <FailureSentence error={write.error} />}
      </div>
    </EnterThrough>
  );
}

function draftOf({ card, build }: Comeback, decimalMark: '.' | ','): CardDraft {
  return {
    cameBackOn: card.cameBackOn,
    distance: card.distance === null ? '' : String(card.distance.amount),
    distanceUnit: card.distance?.unit ?? build.left.distanceAtDelivery?.unit ?? 'miles',
    customerSays: card.customerSays,
    outcome: card.outcome,
    covered: card.covered,
    coveredNote: card.coveredNote,
    cost: card.cost_cents === null ? '' : formatMoney(card.cost_cents, decimalMark),
    note: card.note,
    reason: '',
  };
}
