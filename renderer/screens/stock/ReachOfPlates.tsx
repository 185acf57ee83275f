// What the plates at hand can do for a pack: the clearances one swap brings in, and what to buy for the rest.
import { useState } from 'react';
import { reachStrip } from '../../../app/charts/reach-strip.ts';
import type { Output } from '../../../app/contract/contract.ts';
import type { OutlineLine } from '../../../app/stock/plates.contract.ts';
import { FittedChart } from '../../charts/FittedChart.tsx';
import { Select } from '../../components/Select.tsx';
import { Cell, RowHead, Table } from '../../components/Table.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useRead } from '../../rpc/use-read.ts';
import styles from './ReachOfPlates.module.css';
import { useLengthWords } from './use-length-words.ts';

export function ReachOfPlates({ packs }: { packs: OutlineLine['packs'] }) {
  const [chosen, setChosen] = useState<number | null>(null);
  const pack = packs.find(({ packId }) => packId === chosen) ?? packs[0];
  const read = useRead('stock.getReach', pack ? { packId: pack.packId } : null);
  return (
    <div className={styles.reach}>
      {packs.length > 1 && (
        <div className={styles.pack}>
          <Select
            label="For which pack"
            options={packs.map(({ packId, packName, familyName }) => ({
              id: packId,
              words: `${packName} of ${familyName}`,
            }))}
            value={pack?.packId ?? null}
            onChange={setChosen}
          />
        </div>
      )}
      <Loaded read={read}>{(reach) => <Reach reach={reach} />}</Loaded>
    </div>
  );
}

function Reach({ reach }: { reach: Output<'stock.getReach'> }) {
  const words = useLengthWords();
  const count = reach.packs.length;
  return (
    <>
      <section className={styles.strip} aria-labelledby="reach">
        <h2 id="reach">{reachTitle(reach)}</h2>
        <p className="quiet">{reach.sentence}</p>
        <p className="small quiet">
          {`clearance as read, ${words.unit}; filled: one swap is enough`}
          {count > 0 && '; dots: what the last packs read'}
        </p>
        <FittedChart
          draw={(width) =>
            reachStrip(
              {
                limits: { low: reach.lower_nm, high: reach.upper_nm },
                reach: reach.reach,
                packs: reach.packs.map(({ clearance_nm, swaps }) => ({
                  clearance_nm,
                  isReached: swaps !== null && swaps <= 1,
                })),
              },
              words,
              width,
            )
          }
        />
      </section>
      {reach.buy.length > 0 && (
        <section aria-labelledby="buy">
          <h2 id="buy">To buy, and what it would close</h2>
          <div className={styles.buy}>
            <Table label="To buy, and what it would close">
              <tbody>
                {reach.buy.map(({ heights_nm, covers }) => (
                  <tr key={heights_nm.join(' ')}>
                    <RowHead isStrong>{heights_nm.map(words.full).join(' + ')}</RowHead>
                    <Cell>
                      one swap enough for {covers} of {count}
                    </Cell>
                  </tr>
                ))}
              </tbody>
            </Table>
          </div>
        </section>
      )}
    </>
  );
}

function reachTitle({ packName, packs, covered }: Output<'stock.getReach'>): string {
  if (packs.length === 0) return `What one swap brings into the band of ${packName}`;
  if (packs.length === 1) return `One swap was ${covered === 1 ? '' : 'not '}enough for the last pack`;
  return `One swap was enough for ${covered} of the last ${packs.length} packs`;
}
