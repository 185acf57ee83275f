// The last things that happened to the plates and cans of an outline.
import { Cell, RowHead, Table } from '../../components/Table.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { sayDay } from '../../text/say-date.ts';
import styles from './PlateMoves.module.css';

export function PlateMoves({ outline }: { outline: string }) {
  const moves = useRead('stock.listPlateMoves', { outline, limit: 6 });
  return (
    <section aria-labelledby="moves">
      <h2 id="moves">Last moves</h2>
      <div className={styles.moves}>
        <Loaded read={moves}>
          {(known) => (
            <Table label="Last moves">
              <tbody>
                {known.map((move) => (
                  <tr key={`${move.at} ${move.name} ${move.says}`}>
                    <RowHead>{move.name}</RowHead>
                    <Cell>{move.says}</Cell>
                    <Cell isNumber isQuiet>
                      {sayDay(move.at)}, {move.by}
                    </Cell>
                  </tr>
                ))}
              </tbody>
            </Table>
          )}
        </Loaded>
      </div>
    </section>
  );
}
