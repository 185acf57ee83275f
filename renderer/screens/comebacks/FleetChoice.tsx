// Which builds the fleet is asked about, and by which clock.
import { causes } from '../../../app/comebacks/causes.ts';
import { clockWords } from '../../../app/comebacks/curve-words.ts';
import type { FleetSelection } from '../../../app/comebacks/fleet.contract.ts';
import { clocks } from '../../../app/comebacks/follow-builds.ts';
import type { Output } from '../../../app/contract/contract.ts';
import { Checkbox } from '../../components/Checkbox.tsx';
import { Disclosure } from '../../components/Disclosure.tsx';
import { Select } from '../../components/Select.tsx';
import { TextField } from '../../components/TextField.tsx';
import styles from './Fleet.module.css';

type FleetChoiceProps = {
  choices: Output<'comebacks.fleetChoices'>;
  groups: readonly string[];
  selection: FleetSelection;
  onChange: (selection: FleetSelection) => void;
};

/** Stands for what is not narrowed. */
const all = 'all';

export function FleetChoice({ choices, groups, selection, onChange }: FleetChoiceProps) {
  const change = (some: Partial<FleetSelection>) => onChange({ ...selection, ...some });
  const anyOr = <K extends string>(words: string, ids: readonly K[]) => [
    { id: all, words },
    ...ids.map((id) => ({ id, words: id })),
  ];
  const named = (words: string, some: ReadonlyArray<{ id: number; name: string }>) => [
    { id: all, words },
    ...some.map(({ id, name }) => ({ id: String(id), words: name })),
  ];
  const idOf = (id: string) => (id === all ? null : Number(id));
  return (
    <>
      <div className={styles.choose}>
        <div className={styles.some}>
          <Select
            label="Family"
            options={choices.families.map(({ id, name, builds }) => ({ id, words: `${name}, ${builds}` }))}
            value={selection.familyId}
            onChange={(familyId) => onChange(wholeFamily(familyId, selection.clock))}
          />
        </div>
        <div className={styles.some}>
          <Select
            label="Pack"
            options={anyOr('whole unit', choices.packs)}
            value={selection.packName ?? all}
            onChange={(name) => change({ packName: name === all ? null : name })}
          />
        </div>
        <div className={styles.some}>
          <Select
            label="Cause"
            options={anyOr('any cause', causes)}
            value={selection.cause ?? all}
            onChange={(cause) => change({ cause: causes.find((each) => each === cause) ?? null })}
          />
        </div>
        <div className={styles.some}>
          <Select
            label="Clock"
            options={clocks.map((id) => ({ id, words: clockWords[id] }))}
            value={selection.clock}
            onChange={(clock) => change({ clock })}
          />
        </div>
        <div className={styles.some}>
          <Select
            label="Compare by"
            options={anyOr('nothing', groups)}
            value={selection.groupBy ?? all}
            onChange={(name) => change({ groupBy: name === all ? null : name })}
          />
        </div>
      </div>
      <div className={styles.narrow}>
        {selection.clock !== 'days' && (
          <Checkbox isSelected={selection.guessUse} onChange={(guessUse) => change({ guessUse })}>
            Guess use that nobody wrote down from what the others ran a day
          </Checkbox>
        )}
        <Disclosure words="Only some of them" isOpenAtFirst={isNarrowed(selection)}>
          <div className={styles.more}>
            <div className={styles.some}>
              <Select
                label="Revision of the sheet"
                options={[
                  { id: all, words: 'every one' },
                  ...choices.revisions.map((number) => ({ id: String(number), words: `revision ${number}` })),
                ]}
                value={String(selection.revision ?? all)}
                onChange={(id) => change({ revision: idOf(id) })}
              />
            </div>
            <div className={styles.some}>
              <Select
                label="Built by"
                options={named('anybody', choices.builders)}
                value={String(selection.builderId ?? all)}
                onChange={(id) => change({ builderId: idOf(id) })}
              />
            </div>
            <div className={styles.some}>
              <Select
                label="With the batch"
                options={named('any batch', choices.batches)}
                value={String(selection.batchId ?? all)}
                onChange={(id) => change({ batchId: idOf(id) })}
              />
            </div>
            <div className={styles.some}>
              <TextField
                label="Delivered from"
                type="date"
                value={selection.deliveredFrom ?? ''}
                onChange={(day) => change({ deliveredFrom: day || null })}
              />
            </div>
            <div className={styles.some}>
              <TextField
                label="Delivered until"
                type="date"
                value={selection.deliveredUntil ?? ''}
                onChange={(day) => change({ deliveredUntil: day || null })}
              />
            </div>
          </div>
        </Disclosure>
      </div>
    </>
  );
}

/** All delivered builds of a family, whatever they came back for. */
export function wholeFamily(familyId: number, clock: FleetSelection['clock'] = 'days'): FleetSelection {
  const everyBuild = { revision: null, builderId: null, batchId: null, deliveredFrom: null, deliveredUntil: null };
  return { familyId, packName: null, cause: null, ...everyBuild, clock, guessUse: false, groupBy: null };
}

function isNarrowed({ revision, builderId, batchId, deliveredFrom, deliveredUntil }: FleetSelection): boolean {
  return [revision, builderId, batchId, deliveredFrom, deliveredUntil].some((each) => each !== null);
}
