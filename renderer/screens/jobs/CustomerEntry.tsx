// Whose unit it is: somebody the book knows, taken as soon as a few letters find them, or somebody new.
import { SuggestField } from '../../components/SuggestField.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useRead } from '../../rpc/use-read.ts';
import styles from './CheckInScreen.module.css';
import type { CheckInDraft } from './check-in-draft.ts';

type CustomerEntryProps = {
  draft: CheckInDraft;
  onChange: (more: Partial<CheckInDraft>) => void;
  refusal: string | undefined;
};

export function CustomerEntry({ draft, onChange, refusal }: CustomerEntryProps) {
  const { knownCustomer } = draft;
  const text = knownCustomer ? '' : draft.name.trim();
  const found = useRead('customers.findCustomers', text === '' ? null : { text }, { keepsLast: true });
  const known = text === '' ? [] : (found.data ?? []);
  const name = (
    <SuggestField
      label="Name or phone"
      value={knownCustomer?.name ?? draft.name}
      onChange={(typed) => onChange({ name: typed, knownCustomer: null })}
      suggestions={known.map((each) => ({ id: each.customerId, words: each.name, note: each.phone }))}
      onTake={(id) => {
        const taken = known.find((each) => each.customerId === id);
        if (taken) onChange({ knownCustomer: taken, name: taken.name });
      }}
      hint={knownCustomer ? wasHere(knownCustomer) : undefined}
      refusal={refusal}
      autoFocus
    />
  );
  return (
    <div className={styles.thirds}>
      {name}
      {!knownCustomer && (
        <>
          <TextField label="Phone" value={draft.phone} onChange={(phone) => onChange({ phone })} maxLength={200} />
          <TextField label="Mail" value={draft.email} onChange={(email) => onChange({ email })} maxLength={200} />
        </>
      )}
    </div>
  );
}

function wasHere({ phone, email }: { phone: string; email: string }): string {
  const reach = [phone, email].filter((each) => each !== '').join(', ');
  return reach === '' ? 'Was here before.' : `Was here before: ${reach}.`;
}
