// The shop's labour rate and its tax, set once; what was given keeps the rates it was given with.
import { useState } from 'react';
import type { MoneyTerms } from '../../../app/jobs/estimate.contract.ts';
import { formatTaxRate } from '../../../app/jobs/estimate-typed.ts';
import { Button } from '../../components/Button.tsx';
import { Checkbox } from '../../components/Checkbox.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { Refused, refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import styles from './EstimateScreen.module.css';
import { useEstimateWords } from './use-estimate-words.ts';

export function EstimateTerms({ terms }: { terms: MoneyTerms }) {
  return (
    <PopoverDialog words="Rates and tax…" title="Labour rate and tax of this shop">
      {(close) => <TermsForm terms={terms} onDone={close} />}
    </PopoverDialog>
  );
}

function TermsForm({ terms, onDone }: { terms: MoneyTerms; onDone: () => void }) {
  const { money } = useEstimateWords();
  const { decimalMark } = useOpenShop().settings;
  const { person } = useAtBench();
  const write = useWrite('jobs.setMoneyTerms');
  const [typed, setTyped] = useState(() => ({
    labourRate: terms.labourRate_cents === null ? '' : money(terms.labourRate_cents),
    taxLabel: terms.taxLabel,
    taxRate: formatTaxRate(terms.taxPerHundredThousand, decimalMark),
    isLabourTaxable: terms.isLabourTaxable,
  }));
  const [isTried, setTried] = useState(false);
  const change = (some: Partial<typeof typed>) => setTyped((before) => ({ ...before, ...some }));
  const isNameless = typed.taxLabel.trim() === '';
  const keep = () => {
    setTried(true);
    if (!isNameless && !write.isPending) write.mutate({ ...typed, by: person.personId }, { onSuccess: onDone });
  };
  const isSaidAbove = write.error instanceof Refused && ['labourRate', 'taxRate'].includes(write.error.field ?? '');
  return (
    <EnterThrough label="Labour rate and tax" onFinish={keep} className={styles.form}>
      <TextField
        label="Labour, per hour"
        inputMode="decimal"
        value={typed.labourRate}
        onChange={(labourRate) => change({ labourRate })}
        refusal={refusalAbout('labourRate', write.error)}
      />
      <div className={styles.pair}>
        <TextField
          label="Tax is called"
          value={typed.taxLabel}
          onChange={(taxLabel) => change({ taxLabel })}
          maxLength={200}
          refusal={isTried && isNameless ? 'Type what stands on the paper.' : null}
        />
        <TextField
          label="Tax rate"
          unit="%"
          inputMode="decimal"
          value={typed.taxRate}
          onChange={(taxRate) => change({ taxRate })}
          refusal={refusalAbout('taxRate', write.error)}
        />
      </div>
      <Checkbox isSelected={typed.isLabourTaxable} onChange={(isLabourTaxable) => change({ isLabourTaxable })}>
        Labour and sublet work are taxed
      </Checkbox>
      <p className="small quiet">Holds for open tickets from now on. Estimates given and closed tickets keep theirs.</p>
      <Button type="submit" kind="filled" isPending={write.isPending}>
        Keep these
      </Button>
      {!isSaidAbove && <FailureSentence error={write.error} />}
    </EnterThrough>
  );
}
