// What the vehicle of a job asks of its clutches: engine torque and converter ratio, stated again with a reason.
import { useState } from 'react';
import type { ClutchOfJob } from '../../../app/clutch/clutch.contract.ts';
import { loadSentence } from '../../../app/clutch/clutch-words.ts';
import { loadFields } from '../../../app/clutch/load-fields.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { sayDay } from '../../text/say-date.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './ClutchScreen.module.css';

export function LoadForm({ jobId, load }: { jobId: number; load: ClutchOfJob['load'] }) {
  const { settings } = useOpenShop();
  const [isOpen, setOpen] = useState(load === null);
  return (
    <div className={styles.load}>
      {load && (
        <p>
          {loadSentence(load, settings)}
          <span className="quiet">
            {' '}
            · {sayDay(load.at)}, {load.by}
            {load.reason !== '' && `, ${load.reason}`}
          </span>
        </p>
      )}
      {isOpen ? (
        <LoadFields jobId={jobId} isStated={load !== null} />
      ) : (
        <Button onPress={() => setOpen(true)}>State it again</Button>
      )}
    </div>
  );
}

const blank = { engineTorque: '', converterRatio: '', reason: '' };

function LoadFields({ jobId, isStated }: { jobId: number; isStated: boolean }) {
  const { file, settings } = useOpenShop();
  const { person } = useAtBench();
  const write = useWrite('clutch.stateLoad');
  const draft = useDraft(`clutch load: ${file}, job ${jobId}`, blank);
  const change = (changed: Partial<typeof blank>) => draft.change({ ...draft.value, ...changed });
  const keep = () => {
    if (write.isPending) return;
    write.mutate({ jobId, ...draft.value, by: person.personId }, { onSuccess: () => draft.clear() });
  };
  const about = (field: keyof typeof blank) => refusalAbout(field, write.error);
  const isAbout = (['engineTorque', 'converterRatio', 'reason'] as const).some((field) => about(field) !== null);
  return (
    <EnterThrough label="What the vehicle asks" onFinish={keep} className={styles.loadFields}>
      <TextField
        label="Engine torque"
        unit={loadFields(settings).engineTorque.unit}
        value={draft.value.engineTorque}
        onChange={(engineTorque) => change({ engineTorque })}
        refusal={about('engineTorque')}
        maxLength={200}
      />
      <TextField
        label="Converter ratio"
        hint="at stall; 1 with no converter"
        value={draft.value.converterRatio}
        onChange={(converterRatio) => change({ converterRatio })}
        refusal={about('converterRatio')}
        maxLength={200}
      />
      {isStated && (
        <TextField
          label="Why another figure"
          value={draft.value.reason}
          onChange={(reason) => change({ reason })}
          refusal={about('reason')}
          maxLength={200}
        />
      )}
      <Button type="submit" kind="filled" isPending={write.isPending}>
        State it
      </Button>
      {!isAbout && <FailureSentence error={write.error} />}
    </EnterThrough>
  );
}
