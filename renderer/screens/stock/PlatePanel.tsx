// All that is known of one plate, and what can be done with it.
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { PlateInFull } from '../../../app/stock/plates.contract.ts';
import { Button } from '../../components/Button.tsx';
import { Notice } from '../../components/Notice.tsx';
import { Cell, RowHead, Table } from '../../components/Table.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { sayDay } from '../../text/say-date.ts';
import { PlateDiscardForm } from './PlateDiscardForm.tsx';
import { PlateLookForm } from './PlateLookForm.tsx';
import { PlateMark } from './PlateMark.tsx';
import { PlateMeasureForm } from './PlateMeasureForm.tsx';
import styles from './PlatePanel.module.css';
import { PlateSidePanel } from './PlateSidePanel.tsx';
import { lookWords, narrowestClass, tagWords } from './plate-words.ts';
import { useLengthWords } from './use-length-words.ts';

export function PlatePanel({ pieceId, onClose }: { pieceId: number; onClose: () => void }) {
  const plate = useRead('stock.getPlate', { pieceId });
  return <Loaded read={plate}>{(known) => <KnownPlate plate={known} onClose={onClose} />}</Loaded>;
}

/** "do not use: not flat by 4.0 thou, coned". */
function inFull({ state, why }: PlateInFull): string {
  return state === 'do not use' && why !== '' ? `${state}: ${why}` : state;
}

type Act = 'measure' | 'look' | 'discard';

function KnownPlate({ plate, onClose }: { plate: PlateInFull; onClose: () => void }) {
  const words = useLengthWords();
  const { person } = useAtBench();
  const [act, setAct] = useState<Act | null>(null);
  const [done, setDone] = useState('');
  const putInCan = useWrite('stock.putInCan');
  const isLoose = plate.state === 'free' || plate.state === 'read again';
  const finish = (says: string) => {
    setAct(null);
    setDone(says);
  };
  const begin = (next: Act) => {
    setDone('');
    setAct(act === next ? null : next);
  };
  const name = plate.tag === '' ? `The plate of ${words.full(plate.height_nm)}` : plate.tag;
  return (
    <PlateSidePanel
      title={tagWords(plate.tag)}
      says={
        <>
          <span className="say">{words.full(plate.height_nm)}</span> {words.unit}
        </>
      }
      onClose={onClose}
    >
      <p className={styles.state}>
        <PlateMark mark={plate.state} />
        {plate.where ? (
          <span>
            in {plate.where.packName} of{' '}
            <Link to="/jobs/$jobId" params={{ jobId: String(plate.where.jobId) }}>
              job {plate.where.jobNumber}
            </Link>
          </span>
        ) : (
          inFull(plate)
        )}
        <span className="quiet">{plate.kind}</span>
      </p>
      <div className={styles.keys} data-acts>
        <Button kind={plate.state === 'read again' ? 'filled' : 'plain'} onPress={() => begin('measure')}>
          Measure again
        </Button>
        <Button onPress={() => begin('look')}>Look over</Button>
        {isLoose && (
          <Button
            isPending={putInCan.isPending}
            onPress={() =>
              putInCan.mutate(
                { pieceId: plate.pieceId, class_nm: narrowestClass(words.unit), by: person.personId },
                { onSuccess: onClose },
              )
            }
          >
            Put in its can
          </Button>
        )}
        {isLoose && <Button onPress={() => begin('discard')}>Discard</Button>}
        <LinkKey to="/stock/labels" search={{ of: `plate:${plate.pieceId}` }}>
          Label
        </LinkKey>
        <LinkKey to="/stock/trace/$kind/$id" params={{ kind: 'plate', id: String(plate.pieceId) }}>
          Trace
        </LinkKey>
      </div>
      <FailureSentence error={putInCan.error} />
      {done !== '' && <Notice kind="done">{done}</Notice>}
      {act === 'measure' && (
        <PlateMeasureForm pieceId={plate.pieceId} onDone={() => finish(`${name} is measured again.`)} />
      )}
      {act === 'look' && <PlateLookForm pieceId={plate.pieceId} onDone={() => finish(`${name} is looked over.`)} />}
      {act === 'discard' && (
        <PlateDiscardForm pieceId={plate.pieceId} onDone={() => finish(`${name} is not to be used any more.`)} />
      )}
      <section>
        <h3>Measured</h3>
        <Table label="Measured">
          <tbody>
            {plate.heights.map((height, index) => (
              <tr key={height.at}>
                <RowHead isStrong={index === 0}>{words.full(height.height_nm)}</RowHead>
                <Cell>
                  <span className="small">{heightWords(height, words.full)}</span>
                </Cell>
                <Cell isNumber isQuiet>
                  <span className="small">
                    {sayDay(height.at)}, {height.by}
                  </span>
                </Cell>
              </tr>
            ))}
          </tbody>
        </Table>
      </section>
      {plate.looks.length > 0 && (
        <section>
          <h3>Looked over</h3>
          <Table label="Looked over">
            <tbody>
              {plate.looks.map((look, index) => (
                <tr key={look.at}>
                  <Cell isStrong={index === 0}>{lookWords(look, words)}</Cell>
                  <Cell isNumber isQuiet>
                    <span className="small">
                      {sayDay(look.at)}, {look.by}
                    </span>
                  </Cell>
                </tr>
              ))}
            </tbody>
          </Table>
        </section>
      )}
    </PlateSidePanel>
  );
}

/** "77.3 77.4 77.2, micrometer M2, measured again". */
function heightWords(height: PlateInFull['heights'][number], full: (amount: number) => string): string {
  const points = height.points_nm.length > 1 ? height.points_nm.map(full).join(' ') : '';
  const from = height.heightFrom === 'measured' ? '' : height.heightFrom;
  const micrometer = height.micrometer === '' ? '' : `micrometer ${height.micrometer}`;
  const uncertainty = height.standardUncertainty_nm === null ? '' : `± ${full(2 * height.standardUncertainty_nm)}`;
  return [points, uncertainty, from, micrometer, height.reason].filter((each) => each !== '').join(', ');
}
