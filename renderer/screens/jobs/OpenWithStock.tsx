// What a job leaves open with stock, settled on the spot: cores by how they end, plates by measuring or discarding them.
import { useState } from 'react';
import type { Output } from '../../../app/contract/contract.ts';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import type { Core } from '../../../app/stock/parts.contract.ts';
import { Button } from '../../components/Button.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import styles from './OpenWithStock.module.css';

type Open = Output<'jobs.listWithStock'>;
type Ending = NonNullable<Core['settled']>['how'];

const endings: Record<Core['direction'], readonly Ending[]> = {
  'to send back': ['sent back', 'charged', 'written off'],
  'due to us': ['came back', 'charged', 'written off'],
};

export function OpenWithStock({ job }: { job: Job }) {
  const open = useRead('jobs.listWithStock', { jobId: job.jobId });
  if (!open.data || open.data.cores.length + open.data.plates.length === 0) return null;
  return (
    <section aria-label="Open with stock">
      <p>
        <b>Open with stock</b>
      </p>
      <ul className={styles.lines}>
        {open.data.cores.map((core) => (
          <CoreLine key={core.coreId} core={core} />
        ))}
        {open.data.plates.map((plate) => (
          <PlateLine key={plate.pieceId} plate={plate} jobNumber={job.number} />
        ))}
      </ul>
    </section>
  );
}

function CoreLine({ core }: { core: Open['cores'][number] }) {
  const { person } = useAtBench();
  const write = useWrite('stock.settleCore');
  return (
    <li className={styles.line}>
      <span className={styles.what}>
        Core: {core.what}, {core.direction}
      </span>
      {endings[core.direction].map((how) => (
        <Button
          key={how}
          isPending={write.isPending}
          onPress={() => write.mutate({ coreId: core.coreId, how, note: '', by: person.personId })}
        >
          {how}
        </Button>
      ))}
      <FailureSentence error={write.error} />
    </li>
  );
}

function PlateLine({ plate, jobNumber }: { plate: Open['plates'][number]; jobNumber: number }) {
  const { settings } = useOpenShop();
  const { person } = useAtBench();
  const measure = useWrite('stock.remeasurePiece');
  const discard = useWrite('stock.discardPiece');
  const [typed, setTyped] = useState('');
  const { pieceId } = plate;
  const reason = `came out of job ${jobNumber}`;
  return (
    <li className={styles.line}>
      <span className={styles.what}>{plate.what}</span>
      <TextField
        label={`Height now of ${plate.what}`}
        isLabelHidden
        unit={settings.lengthUnit}
        value={typed}
        onChange={setTyped}
        maxLength={200}
      />
      <Button
        isDisabled={typed.trim() === ''}
        isPending={measure.isPending}
        onPress={() => measure.mutate({ pieceId, typed, reason, by: person.personId })}
      >
        Measured again
      </Button>
      <Button
        isPending={discard.isPending}
        onPress={() => discard.mutate({ pieceId, reason: `${reason}, not kept`, by: person.personId })}
      >
        Not kept
      </Button>
      <FailureSentence error={measure.error ?? discard.error} />
    </li>
  );
}
