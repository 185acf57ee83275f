// One part: how many are on hand, its batches and what moved; receiving and every other act in place.
import { useNavigate } from '@tanstack/react-router';
import { useCallback, useState } from 'react';
import type { Part } from '../../../app/stock/parts.contract.ts';
import { Button } from '../../components/Button.tsx';
import { Notice } from '../../components/Notice.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { PageHead } from '../../frame/PageHead.tsx';
import { useLetterKey } from '../../frame/use-letter-key.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { BatchesTable } from './BatchesTable.tsx';
import { KitContents } from './KitContents.tsx';
import { PartFacts } from './PartFacts.tsx';
import { PartMovements } from './PartMovements.tsx';
import styles from './PartScreen.module.css';
import { ReceiveForm } from './ReceiveForm.tsx';
import { StockTabs } from './StockTabs.tsx';
import { useTakeBack } from './use-take-back.ts';

export function PartScreen({ partId }: { partId: number }) {
  const part = useRead('stock.getPart', { partId });
  return (
    <>
      <StockTabs />
      <Loaded read={part}>{(known) => <PartPage key={known.partId} part={known} />}</Loaded>
    </>
  );
}

function PartPage({ part }: { part: Part }) {
  const [isReceiving, setReceiving] = useState(false);
  const { last, did, takeBack, error } = useTakeBack(part);
  const navigate = useNavigate();
  const params = { partId: String(part.partId) };
  const { partId } = params;
  useLetterKey(
    'r',
    useCallback(() => setReceiving(true), []),
  );
  useLetterKey(
    'e',
    useCallback(() => void navigate({ to: '/stock/parts/$partId/edit', params: { partId } }), [navigate, partId]),
  );
  return (
    <>
      <PageHead
        title={part.number}
        facts={
          <>
            <span>{part.description}</span>
            <span className="quiet">{part.isRetired ? `${part.kind}, retired` : part.kind}</span>
          </>
        }
      />
      <div className={styles.keys}>
        {!isReceiving && (
          <Button kind="filled" keyHint="R" onPress={() => setReceiving(true)}>
            Receive
          </Button>
        )}
        <LinkKey to="/stock/parts/$partId/edit" params={params} keyHint="E">
          Edit
        </LinkKey>
        <LinkKey to="/stock/trace/$kind/$id" params={{ kind: 'part', id: partId }}>
          Trace
        </LinkKey>
        <LinkKey to="/stock/labels" search={{ of: `part:${partId}` }}>
          Label
        </LinkKey>
        <RetireKey part={part} />
      </div>
      {isReceiving && (
        <div className={styles.receive}>
          <ReceiveForm
            part={part}
            onLeave={() => setReceiving(false)}
            onDone={(act) => {
              setReceiving(false);
              did(act);
            }}
          />
        </div>
      )}
      {last && (
        <div className={styles.done}>
          <Notice kind="done">{last.words}</Notice>
          <Button onPress={takeBack}>Take it back</Button>
          <FailureSentence error={error} />
        </div>
      )}
      <PartFacts part={part} />
      <BatchesTable part={part} onDone={did} />
      <KitContents part={part} />
      <PartMovements part={part} />
    </>
  );
}

/** A part with anything on hand can be retired too: it is only not bought any more. */
function RetireKey({ part }: { part: Part }) {
  const { person } = useAtBench();
  const write = useWrite('stock.retirePart');
  return (
    <>
      <Button
        isPending={write.isPending}
        onPress={() => write.mutate({ partId: part.partId, isRetired: !part.isRetired, by: person.personId })}
      >
        {part.isRetired ? 'Use again' : 'Retire'}
      </Button>
      <FailureSentence error={write.error} />
    </>
  );
}
