// One small job of a family: its name and what it takes, ticked off the stages and the newest sheet.
import { useState } from 'react';
import type { SmallJob } from '../../../app/specs/small-jobs.contract.ts';
import type { Revision } from '../../../app/specs/specs.contract.ts';
import { Button } from '../../components/Button.tsx';
import { Checkbox } from '../../components/Checkbox.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { Notice } from '../../components/Notice.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { refusalAbout } from '../../rpc/failures.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './SmallJobsScreen.module.css';

type SmallJobFormProps = { revision: Revision; smallJob: SmallJob | null };

const blank = { name: '', stageIds: [] as number[], checkNames: [] as string[], listNames: [] as string[] };

/** `smallJob` null: a new one. */
export function SmallJobForm({ revision, smallJob }: SmallJobFormProps) {
  const { file } = useOpenShop();
  const { person } = useAtBench();
  const save = useWrite('specs.saveSmallJob');
  const drop = useWrite('specs.dropSmallJob');
  const stages = useRead('jobs.listStages', {});
  const [isTried, setTried] = useState(false);
  const smallJobId = smallJob?.smallJobId ?? null;
  const saved = smallJob === null ? blank : partsOf(smallJob);
  const draft = useDraft<typeof blank | null>(
    `small job ${smallJobId ?? 'new'} of ${revision.familyId}: ${file}`,
    null,
  );
  const typed = draft.value ?? saved;
  const { name, stageIds, checkNames, listNames } = typed;
  const change = (more: Partial<typeof blank>) => {
    save.reset();
    draft.change({ ...typed, ...more });
  };
  const isNameless = name.trim() === '';
  const aboutName = refusalAbout('name', save.error);
  const isChanged = draft.value !== null && !isSame(draft.value, saved);
  const keep = () => {
    setTried(true);
    if (isNameless || save.isPending) return;
    const input = { familyId: revision.familyId, smallJobId, ...typed, by: person.personId };
    save.mutate(input, {
      onSuccess: () => {
        draft.clear();
        setTried(false);
      },
    });
  };
  const called = smallJob?.name ?? 'New small job';
  return (
    <EnterThrough label={called} onFinish={keep} className={styles.form}>
      <div className={styles.name}>
        <TextField
          label={smallJob ? 'Name' : 'New small job'}
          value={name}
          onChange={(value) => change({ name: value })}
          refusal={isTried && isNameless ? 'Type what it is called, such as Reseal.' : aboutName}
          maxLength={200}
        />
      </div>
      <Loaded read={stages}>
        {(order) => (
          <Ticks
            legend="goes through"
            options={order.slice(1).filter((stage) => !stage.isClosed)}
            keyOf={({ stageId }) => stageId}
            ticked={stageIds}
            onTick={(ticked) => change({ stageIds: ticked })}
          />
        )}
      </Loaded>
      <Ticks
        legend="takes the checks"
        options={[...revision.checks, ...gone(checkNames, revision.checks)]}
        keyOf={(check) => check.name}
        ticked={checkNames}
        onTick={(ticked) => change({ checkNames: ticked })}
      />
      <Ticks
        legend="takes the lists"
        options={[...revision.lists, ...gone(listNames, revision.lists)]}
        keyOf={(list) => list.name}
        ticked={listNames}
        onTick={(ticked) => change({ listNames: ticked })}
      />
      <div className={styles.keys}>
        <Button type="submit" isDisabled={!isChanged} isPending={save.isPending}>
          {smallJob ? `Keep ${smallJob.name}` : 'Add the small job'}
        </Button>
        {smallJob && (
          <Button
            isPending={drop.isPending}
            onPress={() => drop.mutate({ smallJobId: smallJob.smallJobId, by: person.personId })}
          >
            {`Take ${smallJob.name} off`}
          </Button>
        )}
        {save.isSuccess && !isChanged && <Notice kind="done">Kept.</Notice>}
        {aboutName === null && <FailureSentence error={save.error ?? drop.error} />}
      </div>
    </EnterThrough>
  );
}

function partsOf({ name, stageIds, checkNames, listNames }: SmallJob): typeof blank {
  return { name, stageIds, checkNames, listNames };
}

/** Whatever order things were ticked in. */
function isSame(one: typeof blank, other: typeof blank): boolean {
  const holdsAll = <T,>(all: readonly T[], some: readonly T[]) =>
    all.length === some.length && some.every((each) => all.includes(each));
  return (
    one.name === other.name &&
    holdsAll(one.stageIds, other.stageIds) &&
    holdsAll(one.checkNames, other.checkNames) &&
    holdsAll(one.listNames, other.listNames)
  );
}

/** Names that are ticked and not on the newest sheet any more, so that they can be taken out. */
function gone(ticked: readonly string[], known: ReadonlyArray<{ readonly name: string }>) {
  return ticked.filter((name) => !known.some((each) => each.name === name)).map((name) => ({ name }));
}

type TicksProps<T extends { readonly name: string }, K> = {
  legend: string;
  options: readonly T[];
  keyOf: (option: T) => K;
  ticked: readonly K[];
  onTick: (ticked: K[]) => void;
};

/** Nothing while there is nothing to tick. */
function Ticks<T extends { readonly name: string }, K>({ legend, options, keyOf, ticked, onTick }: TicksProps<T, K>) {
  if (options.length === 0) return null;
  const keys = options.map(keyOf);
  return (
    <fieldset className={styles.ticks}>
      <legend className="small quiet">{legend}</legend>
      <div>
        {options.map((option, index) => (
          <Checkbox
            key={option.name}
            isSelected={ticked.includes(keys[index] as K)}
            onChange={(isOn) => onTick(keys.filter((key) => (key === keys[index] ? isOn : ticked.includes(key))))}
          >
            {option.name}
          </Checkbox>
        ))}
      </div>
    </fieldset>
  );
}
