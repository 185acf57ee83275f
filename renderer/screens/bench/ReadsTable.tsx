// Every line of a take where it was read, and what the lines come to.
import type { Reading, Take } from '../../../app/readings/readings.contract.ts';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useAtCheck } from './at-check.ts';
import styles from './ReadsTable.module.css';
import { spotName, spotsOf, standingReadings } from './reading-plan.ts';

export type ReadLine = Pick<Reading, 'push' | 'air' | 'first' | 'second' | 'value' | 'isAirOnly'>;

export type ReadsTableProps = {
  take: Take;
  /** What is being typed now, at which spot; its amounts as far as they are understood. */
  typing?: { readonly spot: number; readonly line: ReadLine | null } | null;
};

export function ReadsTable({ take, typing = null }: ReadsTableProps) {
  const { check, words } = useAtCheck();
  const isByAir = take.method === 'air';
  const pair = pairNames(take.method);
  const spots = Math.max(spotsOf(take, check), ...take.readings.map((reading) => reading.spot));
  const standing = standingReadings(take);
  const rows = Array.from({ length: spots }, (_, index) => index + 1).flatMap((spot) => {
    const lines: ReadLine[] = standing.filter((reading) => reading.spot === spot);
    const isTyped = typing?.spot === spot;
    const shown: (ReadLine | null)[] = isTyped ? [...lines, typing.line] : lines.length > 0 ? lines : [null];
    return shown.map((line, index) => ({ spot, index, line, isNow: isTyped && index === shown.length - 1 }));
  });
  const isPaired = rows.some(({ line }) => line?.first != null);
  const { evaluation } = take;
  const amount = (each: number | null) => (each === null ? '' : words.short(each));
  return (
    <Table label="Lines read" density="reading">
      <thead>
        <tr>
          <ColumnHead>{spots === 1 ? 'read' : 'spot'}</ColumnHead>
          {isByAir && <ColumnHead isNumber>push</ColumnHead>}
          {isByAir && <ColumnHead isNumber>air</ColumnHead>}
          {isPaired &&
            pair.map((name) => (
              <ColumnHead key={name} isNumber>
                {name}
              </ColumnHead>
            ))}
          <ColumnHead isNumber>{check.packId === null ? words.unit || 'count' : 'clearance'}</ColumnHead>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ spot, index, line, isNow }) => (
          <tr key={`${spot} ${index}`} className={isNow ? styles.now : undefined} aria-current={isNow || undefined}>
            <RowHead isQuiet={!isNow}>{spots === 1 ? index + 1 : `${spot}, ${spotName(spot, check.spots)}`}</RowHead>
            {isByAir && <Cell isNumber>{amount(line?.push ?? null)}</Cell>}
            {isByAir && <Cell isNumber>{amount(line?.air ?? null)}</Cell>}
            {isPaired && <Cell isNumber>{amount(line?.first ?? null)}</Cell>}
            {isPaired && <Cell isNumber>{amount(line?.second ?? null)}</Cell>}
            <Cell isNumber isStrong>
              {line?.isAirOnly ? 'air only' : amount(line?.value ?? null)}
            </Cell>
          </tr>
        ))}
      </tbody>
      {standing.length > 1 && evaluation.mean !== null && (
        <tfoot>
          <tr>
            <RowHead>mean</RowHead>
            {(isByAir || isPaired) && <Cell columns={2} />}
            <Cell isNumber>{words.full(evaluation.feelerBias?.meanAsRead ?? evaluation.mean)}</Cell>
          </tr>
        </tfoot>
      )}
    </Table>
  );
}

/** What the two numbers of one line are, where two were typed. */
function pairNames(method: Take['method']): readonly [string, string] {
  if (method === 'direct') return ['bore', 'shaft'];
  return method === 'drop' ? ['start', 'end'] : ['one end', 'other end'];
}
