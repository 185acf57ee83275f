// Which build came back: found by case tag, serial, job number or customer, or by the label on its case.
import { useEffect } from 'react';
import type { BuildToHold } from '../../../app/comebacks/log.contract.ts';
import { Button } from '../../components/Button.tsx';
import { SuggestField } from '../../components/SuggestField.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { sayBusinessDay } from '../../text/part-words.ts';
import styles from './Comebacks.module.css';

type BuildEntryProps = {
  text: string;
  onType: (text: string) => void;
  onTake: (build: BuildToHold) => void;
  refusal: string | undefined;
};

export function BuildEntry({ text, onType, onTake, refusal }: BuildEntryProps) {
  const sought = text.trim();
  const found = useRead('comebacks.findBuilds', sought === '' ? null : { text: sought }, { keepsLast: true });
  const builds = sought === '' ? [] : (found.data ?? []);
  // A scan ends before the book has answered: the one build that carries just these words is meant.
  const named =
    found.isPlaceholderData || builds.length !== 1 ? undefined : builds.find((each) => carries(each, sought));
  useEffect(() => {
    if (named) onTake(named);
  }, [named, onTake]);
  const isNothing = sought !== '' && found.isSuccess && !found.isPlaceholderData && builds.length === 0;
  return (
    <div className={styles.full}>
      <SuggestField
        label="Case tag, serial, job number or customer"
        autoFocus
        value={text}
        onChange={onType}
        suggestions={builds.map((each) => ({ id: each.jobId, words: nameOf(each), note: noteOf(each) }))}
        onTake={(id) => {
          const taken = builds.find((each) => each.jobId === id);
          if (taken) onTake(taken);
        }}
        hint={
          isNothing
            ? 'No unit with these words has left the shop with a delivery.'
            : 'Scan the label, or type a part of it.'
        }
        refusal={refusal}
      />
    </div>
  );
}

/** The build that was chosen, and the way to another. */
export function ChosenBuild({ build, onLeave }: { build: BuildToHold; onLeave: () => void }) {
  const { unit, customer, cameBack } = build;
  return (
    <div className={styles.chosen}>
      <p>
        <b>{nameOf(build)}</b>, {[unit.vehicle, unit.use].filter(Boolean).join(', ')}
      </p>
      <p>{[customer.name, customer.phone].filter(Boolean).join(', ')}</p>
      <p>{handedOver(build)}</p>
      {cameBack.length > 0 && (
        <p>
          Came back before:{' '}
          {cameBack.map((each) => `${sayBusinessDay(each.cameBackOn)} as job ${each.number}`).join(', ')}.
        </p>
      )}
      <div className={styles.keys}>
        <Button onPress={onLeave}>Another build</Button>
      </div>
    </div>
  );
}

function carries(build: BuildToHold, text: string): boolean {
  const sought = text.toLowerCase();
  const carried = [build.caseTag, build.unit.serial, String(build.number), `thou-j${build.jobId}`];
  return carried.some((each) => each.toLowerCase() === sought);
}

function nameOf({ number, unit }: BuildToHold): string {
  return `Job ${number}, ${unit.familyName} ${unit.serial}`.trim();
}

function noteOf(build: BuildToHold): string {
  return [build.customer.name, build.caseTag && `tag ${build.caseTag}`, handedOver(build)].filter(Boolean).join(', ');
}

function handedOver({ deliveredOn, left }: BuildToHold): string {
  const service =
    left.inServiceOn === null
      ? 'nobody said when it went into service'
      : left.inServiceOn === deliveredOn
        ? ''
        : `in service since ${sayBusinessDay(left.inServiceOn)}`;
  return [`handed over ${sayBusinessDay(deliveredOn)}`, service].filter(Boolean).join(', ');
}
