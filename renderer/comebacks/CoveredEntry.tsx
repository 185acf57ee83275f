// Whether a comeback is covered: what the warranty's rule says at the day and use of return, and what a person decides.
import { coverings } from '../../app/comebacks/causes.ts';
import type { DeliveredBuild } from '../../app/comebacks/log.contract.ts';
import { type Return, warrantyStanding } from '../../app/jobs/warranty.ts';
import { RadioGroup } from '../components/RadioGroup.tsx';
import { TextField } from '../components/TextField.tsx';
import { useOpenShop } from '../frame/open-shop.ts';
import { sayBusinessDay } from '../text/part-words.ts';

export type CoveredTyped = { readonly covered: (typeof coverings)[number]; readonly coveredNote: string };

type CoveredEntryProps = {
  /** The warranty it left with. */
  left: DeliveredBuild['left'];
  now: Return;
  value: CoveredTyped;
  onChange: (value: CoveredTyped) => void;
};

export function CoveredEntry({ left, now, value, onChange }: CoveredEntryProps) {
  return (
    <>
      <CoverRule left={left} now={now} />
      <RadioGroup
        label="Covered"
        options={coverings.map((id) => ({ id, words: id }))}
        value={value.covered}
        onChange={(covered) => onChange({ ...value, covered })}
      />
      <TextField
        label="Why so"
        hint="Where it is decided otherwise than the rule says."
        value={value.coveredNote}
        onChange={(coveredNote) => onChange({ ...value, coveredNote })}
        maxLength={200}
      />
    </>
  );
}

/** The rule at return, in one sentence. */
export function CoverRule({ left, now }: { left: DeliveredBuild['left']; now: Return }) {
  const { decimalMark } = useOpenShop().settings;
  if (now.day === '') return null;
  const { words } = warrantyStanding(left, now, { decimalMark, sayDay: sayBusinessDay });
  return (
    <p role="status">
      By the warranty it left with, on {sayBusinessDay(now.day)}: <b>{words}</b>.
    </p>
  );
}
