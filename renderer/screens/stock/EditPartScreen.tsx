// What is said of a part, new or known: what it is, where it comes from, when to buy it, which units it fits.
import { useNavigate } from '@tanstack/react-router';
import { useRef, useState } from 'react';
import { type Part, partKinds } from '../../../app/stock/parts.contract.ts';
import { Button } from '../../components/Button.tsx';
import { Checkbox } from '../../components/Checkbox.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { FormKeys } from '../../components/FormKeys.tsx';
import { FormSection } from '../../components/FormSection.tsx';
import { Select } from '../../components/Select.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { useHandAtRefusal } from '../../frame/use-hand-at-refusal.ts';
import { Refused, refusalAbout } from '../../rpc/failures.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useDraft } from '../../text/use-draft.ts';
import { useMoneyWords } from '../../text/use-money-words.ts';
import styles from './EditPartScreen.module.css';
import { KitContentsEntry } from './KitContentsEntry.tsx';
import { blankPart, draftOf, type PartDraft, partOf, refusalsOf } from './part-draft.ts';
import { StockTabs } from './StockTabs.tsx';
import { SupplierEntry } from './SupplierEntry.tsx';

export function EditPartScreen({ partId }: { partId: number | null }) {
  const part = useRead('stock.getPart', partId === null ? null : { partId });
  return (
    <>
      <StockTabs />
      {partId === null ? <PartForm part={null} /> : <Loaded read={part}>{(known) => <PartForm part={known} />}</Loaded>}
    </>
  );
}

function PartForm({ part }: { part: Part | null }) {
  const { file } = useOpenShop();
  const { person } = useAtBench();
  const navigate = useNavigate();
  const money = useMoneyWords();
  const write = useWrite('stock.savePart');
  const [isTried, setTried] = useState(false);
  const page = useRef<HTMLDivElement>(null);
  // The book refuses after the form has looked for what is wrong.
  useHandAtRefusal(page, write.error);
  const partId = part?.partId ?? null;
  const kept = useDraft<PartDraft>(`part ${partId ?? 'new'} in ${file}`, part ? draftOf(part, money) : blankPart);
  const draft = kept.value;
  const change = (more: Partial<PartDraft>) => kept.change({ ...draft, ...more });
  const refusals = isTried ? refusalsOf(draft) : {};
  const about = (field: keyof PartDraft) => refusals[field] ?? refusalAbout(field, write.error);

  const leave = (to: number | null) => {
    kept.clear();
    if (to === null) void navigate({ to: '/stock' });
    else void navigate({ to: '/stock/parts/$partId', params: { partId: String(to) } });
  };
  const save = () => {
    setTried(true);
    const input = partOf(draft, partId, person.personId);
    if (input === null || write.isPending) return;
    write.mutate(input, { onSuccess: (saved) => leave(saved.partId) });
  };
  const line = (
    field: TextOfDraft,
    label: string,
    more: { autoFocus?: boolean; inputMode?: 'numeric' | 'decimal' } = {},
  ) => (
    <TextField
      label={label}
      maxLength={200}
      value={draft[field]}
      onChange={(typed) => change({ [field]: typed })}
      refusal={about(field)}
      {...more}
    />
  );
  return (
    <div ref={page}>
      <PageHead title={part ? part.number : 'New part'} facts={part && `${part.description}, edited`} />
      <EnterThrough label={part ? 'Edit the part' : 'New part'} onFinish={save}>
        <FormSection title="What it is" about="The number is how the shelf, the label and the supplier call it.">
          <div className={styles.wide}>
            {line('number', 'Number', { autoFocus: part === null })}
            {line('description', 'Description')}
          </div>
          <div className={styles.thirds}>
            <Select
              label="Kind"
              options={partKinds.map((kind) => ({ id: kind, words: kind }))}
              value={draft.kind}
              onChange={(kind) => change({ kind })}
              refusal={about('kind')}
            />
            {line('unitOfIssue', 'One is')}
            {line('bin', 'Bin')}
          </div>
        </FormSection>
        {draft.kind === 'kit' && (
          <FormSection title="What lies in it" about="Pulled as one line; a ticket and a trace see its parts.">
            <KitContentsEntry
              contents={draft.contents}
              onChange={(contents) => change({ contents })}
              refusal={about('contents')}
            />
          </FormSection>
        )}
        <FormSection title="Where it comes from" about="Cost is what the shop pays, price what the customer pays.">
          <SupplierEntry value={draft.supplier} onChange={(supplier) => change({ supplier })} />
          <div className={styles.thirds}>
            {line('cost', 'Cost', { inputMode: 'decimal' })}
            {line('price', 'Price', { inputMode: 'decimal' })}
            {line('coreCharge', 'Core charge', { inputMode: 'decimal' })}
          </div>
        </FormSection>
        <FormSection title="When to buy" about="At or under the point it stands under To buy.">
          <div className={styles.thirds}>
            {line('reorderPoint', 'Reorder at', { inputMode: 'numeric' })}
            {line('reorderQuantity', 'So many at a time', { inputMode: 'numeric' })}
          </div>
        </FormSection>
        <FamiliesEntry chosen={draft.familyIds} onChange={(familyIds) => change({ familyIds })} />
        <FormKeys>
          <Button type="submit" kind="filled" keyHint="Enter" isPending={write.isPending}>
            {part ? 'Save' : 'Write it down'}
          </Button>
          <Button onPress={() => leave(partId)}>{part ? 'Leave it as it was' : 'Leave it'}</Button>
          {!isAtField(write.error) && <FailureSentence error={write.error} />}
        </FormKeys>
      </EnterThrough>
    </div>
  );
}

type TextOfDraft = Exclude<keyof PartDraft, 'kind' | 'familyIds' | 'contents'>;

function FamiliesEntry({
  chosen,
  onChange,
}: {
  chosen: readonly number[];
  onChange: (familyIds: readonly number[]) => void;
}) {
  const families = useRead('specs.listFamilies', {});
  if (!families.data || families.data.length === 0) return null;
  return (
    <FormSection title="Which units it fits" about="None chosen: it fits any unit.">
      <div className={styles.families}>
        {families.data.map(({ familyId, name }) => (
          <Checkbox
            key={familyId}
            isSelected={chosen.includes(familyId)}
            onChange={(fits) => onChange(fits ? [...chosen, familyId] : chosen.filter((each) => each !== familyId))}
          >
            {name}
          </Checkbox>
        ))}
      </div>
    </FormSection>
  );
}

function isAtField(error: Error | null): boolean {
  return error instanceof Refused && error.field !== null && error.field in blankPart;
}
