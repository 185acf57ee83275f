// The entries of a finding: a part with what the book knows offered, where it lay, its condition, what is left of it.
import { type KeyboardEvent, type ReactNode, useState } from 'react';
import { type PackPlace, packPlaces } from '../../../app/jobs/findings.contract.ts';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { slotName } from '../../../app/packs/slot-name.ts';
import { isHardPart } from '../../../app/readings/hard-part.ts';
import type { SavedPack } from '../../../app/specs/specs.contract.ts';
import { Select } from '../../components/Select.tsx';
import { SuggestField } from '../../components/SuggestField.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { refusalAbout } from '../../rpc/failures.ts';
import { useRead } from '../../rpc/use-read.ts';
import { conditionMeant, conditionRefusal, conditionsBeginning, type FindingDraft } from './finding-draft.ts';
import styles from './Teardown.module.css';

type FindingFieldsProps = {
  job: Job;
  packs: readonly SavedPack[];
  draft: FindingDraft;
  onChange: (some: Partial<FindingDraft>) => void;
  isTried: boolean;
  error: Error | null;
  /** Between what is left and the note. */
  children?: ReactNode;
};

export function FindingFields({ job, packs, draft, onChange, isTried, error, children }: FindingFieldsProps) {
  const { settings } = useOpenShop();
  const { checks } = job;
  return (
    <div className={styles.entries} onKeyDownCapture={goOnFromList}>
      <div className={styles.long}>
        <PartField job={job} draft={draft} onChange={onChange} isTried={isTried} />
      </div>
      <div className={styles.middling}>
        <Select
          label="Where"
          options={placesOf(packs, draft)}
          value={placeId(draft)}
          onChange={(id) => onChange(placeOf(id))}
        />
      </div>
      <div className={styles.middling}>
        <ConditionField draft={draft} onChange={onChange} isTried={isTried} />
      </div>
      <div className={styles.short}>
        <TextField
          label={`Left, ${settings.lengthUnit}`}
          inputMode="decimal"
          value={draft.thickness}
          onChange={(thickness) => onChange({ thickness })}
          refusal={refusalAbout('thickness', error)}
        />
      </div>
      {children}
      <div className={styles.long}>
        <TextField label="Note" value={draft.note} onChange={(note) => onChange({ note })} />
      </div>
      <div className={styles.middling}>
        <Select
          label="Measured by"
          options={[
            { id: 0, words: 'no check' },
            ...checks.filter(isHardPart).map((check) => ({ id: check.checkId, words: check.name })),
          ]}
          value={draft.checkId ?? 0}
          onChange={(id) => onChange({ checkId: id === 0 ? null : id })}
        />
      </div>
    </div>
  );
}

function PartField({
  job,
  draft,
  onChange,
  isTried,
}: Pick<FindingFieldsProps, 'job' | 'draft' | 'onChange' | 'isTried'>) {
  const [isTyping, setTyping] = useState(false);
  const text = draft.part.trim();
  const input = isTyping && text !== '' ? { jobId: job.jobId, text } : null;
  const offered = useRead('jobs.suggestParts', input, { keepsLast: true });
  const parts = input ? (offered.data ?? []) : [];
  return (
    <SuggestField
      label="Part"
      value={draft.part}
      onChange={(part) => {
        setTyping(true);
        onChange({ part, slotId: null });
      }}
      suggestions={parts.map(({ part, note }, index) => ({ id: index + 1, words: part, note }))}
      onTake={(index) => {
        const taken = parts[index - 1];
        setTyping(false);
        if (taken) onChange({ part: taken.part, packId: taken.packId, slotId: taken.slotId, place: null });
      }}
      refusal={isTried && text === '' ? 'Say which part: friction 2, pump bushing …' : null}
    />
  );
}

function ConditionField({ draft, onChange, isTried }: Pick<FindingFieldsProps, 'draft' | 'onChange' | 'isTried'>) {
  const [isTyping, setTyping] = useState(false);
  const offered = isTyping ? conditionsBeginning(draft.condition) : [];
  return (
    <SuggestField
      label="Condition"
      value={draft.condition}
      onChange={(condition) => {
        setTyping(true);
        onChange({ condition });
      }}
      suggestions={offered.map((words, index) => ({ id: index + 1, words, note: '' }))}
      onTake={(index) => {
        setTyping(false);
        onChange({ condition: offered[index - 1] ?? draft.condition });
      }}
      refusal={isTried ? conditionRefusal(draft.condition) : null}
    />
  );
}

/** Enter on what is typed goes on to the next entry, also while a list hangs below; on a line of it, it takes that. */
function goOnFromList(event: KeyboardEvent<HTMLDivElement>): void {
  const { target } = event;
  if (event.key !== 'Enter' || event.ctrlKey || event.metaKey || !(target instanceof HTMLInputElement)) return;
  if (target.role !== 'combobox' || target.getAttribute('aria-activedescendant')) return;
  const entries = [...event.currentTarget.querySelectorAll<HTMLInputElement>('input')].filter(
    (each) => each.tabIndex >= 0 && each.type !== 'hidden',
  );
  const next = entries[entries.indexOf(target) + 1];
  if (!next) return;
  event.preventDefault();
  event.stopPropagation();
  next.focus();
  next.select();
}

const placeId = ({ packId, slotId, place }: FindingDraft): string =>
  packId === null ? '' : slotId === null ? `${packId}:${place ?? ''}` : `${packId}:slot ${slotId}`;

function placeOf(id: string): Pick<FindingDraft, 'packId' | 'slotId' | 'place'> {
  const [packId = '', place = ''] = id.split(':');
  if (packId === '') return { packId: null, slotId: null, place: null };
  if (place.startsWith('slot ')) return { packId: Number(packId), slotId: Number(place.slice(5)), place: null };
  return { packId: Number(packId), slotId: null, place: place === '' ? null : (place as PackPlace) };
}

/** No pack; each pack and its ends; of the pack in hand its slots too. */
function placesOf(packs: readonly SavedPack[], draft: FindingDraft) {
  return [
    { id: '', words: 'no pack' },
    ...packs.flatMap(({ packId, name, slots }) => [
      { id: `${packId}:`, words: name },
      ...packPlaces.map((place) => ({ id: `${packId}:${place}`, words: `${name}, ${place}` })),
      ...(packId === draft.packId
        ? slots.map((slot, index) => ({
            id: `${packId}:slot ${slot.slotId}`,
            words: `${name}, ${slotName(slots, index)}`,
          }))
        : []),
    ]),
  ];
}

/** The whole word in place of its first letters. */
export function withWholeCondition<D extends FindingDraft>(draft: D): D {
  return { ...draft, condition: conditionMeant(draft.condition) ?? draft.condition };
}
