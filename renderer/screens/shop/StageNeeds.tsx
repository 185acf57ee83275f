// What each stage asks for before a job moves past it: a tick for every need, kept as it is set.
import { type Need, needs } from '../../../app/jobs/needs.ts';
import type { Stage } from '../../../app/jobs/stages.contract.ts';
import { Checkbox } from '../../components/Checkbox.tsx';
import { Select } from '../../components/Select.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './StageNeeds.module.css';

export function StageNeeds() {
  const read = useRead('jobs.listStages', {});
  return (
    <Loaded read={read}>{(stages) => <NeedsOfStages stages={stages.filter((stage) => !stage.isClosed)} />}</Loaded>
  );
}

function NeedsOfStages({ stages }: { stages: readonly Stage[] }) {
  const { person } = useAtBench();
  const write = useWrite('jobs.changeStageNeeds');
  const chosen = useDraft('stage whose needs are set', stages[0]?.stageId ?? 0);
  const stage = stages.find((each) => each.stageId === chosen.value) ?? stages[0];
  if (!stage) return null;
  const set = (need: Need, isAsked: boolean) =>
    write.mutate({
      stageId: stage.stageId,
      needs: needs.filter((each) => (each === need ? isAsked : stage.needs.includes(each))),
      by: person.personId,
    });
  return (
    <div className={styles.stages}>
      <Select
        label="Before a job leaves"
        options={stages.map(({ stageId, name }) => ({ id: stageId, words: name }))}
        value={stage.stageId}
        onChange={chosen.change}
      />
      <fieldset className={styles.needs}>
        <legend className="small quiet">it asks for</legend>
        <div>
          {needs.map((need) => (
            <Checkbox key={need} isSelected={stage.needs.includes(need)} onChange={(isOn) => set(need, isOn)}>
              {need}
            </Checkbox>
          ))}
        </div>
      </fieldset>
      <FailureSentence error={write.error} />
    </div>
  );
}
