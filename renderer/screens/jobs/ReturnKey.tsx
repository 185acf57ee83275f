// Gives a part back to its shelf: at once when there is one of it, after asking how many when there are more.
import { useState } from 'react';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { TextField } from '../../components/TextField.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { countRefusal, countTyped } from '../../text/part-words.ts';
import styles from './PartsOfJob.module.css';
import type { PartsOfJobActs, PartToReturn } from './use-parts-of-job.ts';

type ReturnKeyProps = { acts: PartsOfJobActs; part: PartToReturn };

export function ReturnKey({ acts, part }: ReturnKeyProps) {
  if (part.quantity === 1) {
    return (
      <Button aria-label={`Return ${part.number}`} onPress={() => acts.giveBack(part, () => {})}>
        Return
      </Button>
    );
  }
  return (
    <PopoverDialog words="Return" title={`Return ${part.number}`} aria-label={`Return ${part.number}`}>
      {(close) => <HowMany acts={acts} part={part} onDone={close} />}
    </PopoverDialog>
  );
}

function HowMany({ acts, part, onDone }: ReturnKeyProps & { onDone: () => void }) {
  const [typed, setTyped] = useState(String(part.quantity));
  const [isTried, setTried] = useState(false);
  const count = countTyped(typed);
  const giveBack = () => {
    setTried(true);
    if (count !== null) acts.giveBack({ ...part, quantity: count }, onDone);
  };
  return (
    <EnterThrough label="How many come back" onFinish={giveBack} className={styles.howMany}>
      <TextField
        label={`How many of ${part.quantity} come back`}
        inputMode="numeric"
        autoFocus
        value={typed}
        onChange={setTyped}
        refusal={isTried && count === null ? countRefusal : null}
      />
      <Button type="submit" kind="filled" keyHint="Enter">
        Return
      </Button>
      <FailureSentence error={acts.returnError} />
    </EnterThrough>
  );
}
