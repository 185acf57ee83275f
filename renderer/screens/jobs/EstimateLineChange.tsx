// A line is changed by putting another in its place, or taken off; what stood there stays in the book.
import { useState } from 'react';
import type { EstimateLine, MoneyTerms } from '../../../app/jobs/estimate.contract.ts';
import { Button } from '../../components/Button.tsx';
import { classNames } from '../../components/class-names.ts';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { isSaidAtEntry, LineEntries } from './EstimateLineForm.tsx';
import styles from './EstimateScreen.module.css';
import { lineToChange } from './estimate-draft.ts';

type EstimateLineChangeProps = { line: EstimateLine; terms: MoneyTerms; showsCost: boolean };

export function EstimateLineChange(props: EstimateLineChangeProps) {
  return (
    <PopoverDialog words="Change…" title={props.line.description}>
      {(close) => <ChangeForm {...props} onDone={close} />}
    </PopoverDialog>
  );
}

function ChangeForm({ line, terms, showsCost, onDone }: EstimateLineChangeProps & { onDone: () => void }) {
  const { decimalMark } = useOpenShop().settings;
  const { person } = useAtBench();
  const [typed, setTyped] = useState(() => lineToChange(line, decimalMark));
  const [reason, setReason] = useState('');
  const [isTried, setTried] = useState(false);
  const replace = useWrite('jobs.replaceLine');
  const takeOff = useWrite('jobs.takeLineOff');
  const act = { lineId: line.lineId, reason, by: person.personId };
  const isReasonless = line.wasGiven && reason.trim() === '';
  const keep = () => {
    setTried(true);
    takeOff.reset();
    if (typed.description.trim() === '' || isReasonless || replace.isPending) return;
    replace.mutate({ ...act, line: typed }, { onSuccess: onDone });
  };
  const error = replace.error ?? takeOff.error;
  return (
    <EnterThrough
      label={`Change ${line.description}`}
      onFinish={keep}
      className={classNames(styles.entry, styles.change)}
    >
      <LineEntries
        typed={typed}
        onChange={setTyped}
        terms={terms}
        error={replace.error}
        isTried={isTried}
        showsCost={showsCost}
      />
      <div className={styles.wide}>
        <TextField
          label="Why"
          hint={line.wasGiven ? 'The customer was told of this line.' : 'Or nothing: the customer was not told of it.'}
          value={reason}
          onChange={setReason}
          maxLength={200}
          refusal={isTried && isReasonless ? 'Say why it changes.' : refusalAbout('reason', error)}
        />
      </div>
      <div className={styles.keys}>
        <Button type="submit" kind="filled" isPending={replace.isPending}>
          Put this in its place
        </Button>
        <Button
          isPending={takeOff.isPending}
          onPress={() => {
            setTried(true);
            replace.reset();
            if (!isReasonless) takeOff.mutate(act, { onSuccess: onDone });
          }}
        >
          Take the line off
        </Button>
        {!isSaidAtEntry(error) && <FailureSentence error={error} />}
      </div>
    </EnterThrough>
  );
}
