// One line, typed: Enter goes from entry to entry and from the last one into the book.
import { useRef, useState } from 'react';
import { lineKinds, type MoneyTerms, type TypedLine } from '../../../app/jobs/estimate.contract.ts';
import { isUsuallyTaxed } from '../../../app/jobs/estimate-kinds.ts';
import { Button } from '../../components/Button.tsx';
import { Checkbox } from '../../components/Checkbox.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { Refused, refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import type { Draft } from '../../text/use-draft.ts';
import styles from './EstimateScreen.module.css';
import { blankLine } from './estimate-draft.ts';
import { useEstimateWords } from './use-estimate-words.ts';

const kindWords: Record<TypedLine['kind'], string> = {
  labour: 'Labour',
  part: 'Part',
  kit: 'Kit',
  sublet: 'Sublet',
  'core charge': 'Core charge',
  other: 'Other',
};

type LineEntriesProps = {
  typed: TypedLine;
  onChange: (line: TypedLine) => void;
  terms: MoneyTerms;
  error: Error | null;
  isTried: boolean;
  showsCost: boolean;
};

/** The entries of a line, for adding one and for changing one. */
export function LineEntries({ typed, onChange, terms, error, isTried, showsCost }: LineEntriesProps) {
  const { money } = useEstimateWords();
  const change = (some: Partial<TypedLine>) => onChange({ ...typed, ...some });
  const isLabour = typed.kind === 'labour';
  const rate = isLabour && terms.labourRate_cents !== null ? money(terms.labourRate_cents) : '';
  return (
    <>
      <div className={styles.wide}>
        <RadioGroup
          label="Kind"
          isLabelHidden
          options={lineKinds.map((id) => ({ id, words: kindWords[id] }))}
          value={typed.kind}
          onChange={(kind) => change({ kind, isTaxable: isUsuallyTaxed(kind, terms), batchId: null })}
        />
      </div>
      <TextField
        label="What"
        value={typed.description}
        onChange={(description) => change({ description })}
        maxLength={200}
        refusal={isTried && typed.description.trim() === '' ? 'Say what it is for.' : null}
      />
      <TextField
        label={isLabour ? 'Hours' : 'Quantity'}
        inputMode="decimal"
        placeholder="1"
        value={typed.quantity}
        onChange={(quantity) => change({ quantity })}
        refusal={refusalAbout('quantity', error)}
      />
      <TextField
        label={isLabour ? 'Price per hour' : 'Price of one'}
        inputMode="decimal"
        placeholder={rate}
        value={typed.unitPrice}
        onChange={(unitPrice) => change({ unitPrice })}
        refusal={refusalAbout('unitPrice', error)}
      />
      {showsCost && (
        <TextField
          label="Our cost of one"
          inputMode="decimal"
          value={typed.unitCost}
          onChange={(unitCost) => change({ unitCost })}
          refusal={refusalAbout('unitCost', error)}
        />
      )}
      <div className={styles.wide}>
        <Checkbox isSelected={typed.isTaxable} onChange={(isTaxable) => change({ isTaxable })}>
          It is taxed
        </Checkbox>
      </div>
    </>
  );
}

/** Whether the refusal is said at one of the entries above. */
export function isSaidAtEntry(error: Error | null): boolean {
  return error instanceof Refused && ['quantity', 'unitPrice', 'unitCost', 'reason'].includes(error.field ?? '');
}

type EstimateLineFormProps = { jobId: number; terms: MoneyTerms; draft: Draft<TypedLine>; showsCost: boolean };

export function EstimateLineForm({ jobId, terms, draft, showsCost }: EstimateLineFormProps) {
  const { person } = useAtBench();
  const write = useWrite('jobs.addLine');
  const [isTried, setTried] = useState(false);
  const form = useRef<HTMLDivElement>(null);
  const typed = draft.value;
  const add = () => {
    setTried(true);
    if (typed.description.trim() === '' || write.isPending) return;
    write.mutate(
      { jobId, line: typed, by: person.personId },
      {
        onSuccess: () => {
          setTried(false);
          draft.change(blankLine(terms, typed.kind));
          // The next line is likely of the same kind, so the hand goes back to what it is for.
          form.current?.querySelector<HTMLInputElement>('input:not([type])[maxlength], input[type="text"]')?.focus();
        },
      },
    );
  };
  return (
    <div ref={form}>
      <EnterThrough label="Add a line" onFinish={add} className={styles.entry}>
        <LineEntries
          typed={typed}
          onChange={draft.change}
          terms={terms}
          error={write.error}
          isTried={isTried}
          showsCost={showsCost}
        />
        <div className={styles.keys}>
          <Button type="submit" isPending={write.isPending}>
            Add the line
          </Button>
          {!isSaidAtEntry(write.error) && <FailureSentence error={write.error} />}
        </div>
      </EnterThrough>
    </div>
  );
}
