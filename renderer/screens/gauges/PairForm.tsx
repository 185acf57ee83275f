// The same thing read two ways, typed in: a pair that the bench does not hold.

import type { MethodPair, pairedMethods } from '../../../app/gauges/agreement.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { Refused, refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './Gauges.module.css';
import { methodNames } from './method-words.ts';

type Method = (typeof pairedMethods)[number];

const hints: Record<Method, string | undefined> = {
  air: 'push-down and travel: 4 23',
  feeler: 'goes and stops: 25 26',
  dial: undefined,
  direct: undefined,
};

export function PairForm({
  first,
  second,
  misread,
  onDone,
}: {
  first: Method;
  second: Method;
  /** The pair whose place this one takes. */
  misread: MethodPair | null;
  onDone: () => void;
}) {
  const { file, settings } = useOpenShop();
  const { person } = useAtBench();
  const write = useWrite('gauges.addPair');
  const key = `pair of ${first} and ${second} in ${file}, instead of ${misread?.methodPairId ?? 'none'}`;
  const kept = useDraft(key, { what: misread?.what ?? '', firstTyped: '', secondTyped: '', reason: '' });
  const draft = kept.value;
  const entry = (
    field: keyof typeof draft,
    label: string,
    more: { hint?: string | undefined; unit?: string; autoFocus?: boolean } = {},
  ) => (
    <TextField
      label={label}
      value={draft[field]}
      maxLength={200}
      onChange={(typed) => kept.change({ ...draft, [field]: typed })}
      refusal={refusalAbout(field, write.error)}
      {...more}
    />
  );
  const save = () => {
    if (write.isPending) return;
    const supersedesId = misread?.methodPairId ?? null;
    write.mutate(
      { ...draft, first, second, supersedesId, by: person.personId },
      {
        onSuccess: () => {
          kept.clear();
          onDone();
        },
      },
    );
  };
  const unit = settings.lengthUnit;
  return (
    <EnterThrough label={misread ? 'Put a misread pair right' : 'Enter a pair'} onFinish={save} className={styles.form}>
      <div className={styles.line}>
        <div className={styles.much}>{entry('what', 'What was read', { autoFocus: true })}</div>
        <div className={styles.some}>
          {entry('firstTyped', `By ${methodNames[first]}`, { unit, hint: hints[first] })}
        </div>
        <div className={styles.some}>
          {entry('secondTyped', `By ${methodNames[second]}`, { unit, hint: hints[second] })}
        </div>
        {misread && <div className={styles.much}>{entry('reason', 'What was misread')}</div>}
      </div>
      <div className={styles.line}>
        <Button type="submit" kind="filled" isPending={write.isPending}>
          {misread ? 'Put this in its place' : 'Keep the pair'}
        </Button>
        <Button onPress={onDone}>Leave it</Button>
        {!(write.error instanceof Refused && write.error.field && write.error.field in draft) && (
          <FailureSentence error={write.error} />
        )}
      </div>
    </EnterThrough>
  );
}
