// The spots of a take side by side, as they go round the drum: push-down, air travel and what they come to.
import type { Take } from '../../../app/readings/readings.contract.ts';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useAtCheck } from './at-check.ts';
import { ReadsTable } from './ReadsTable.tsx';
import { spotName, standingReadings } from './reading-plan.ts';

/** As many as stand side by side, each with a decimal, at the size the bench is read from. */
const mostAcross = 4;

/**
 * One line a spot where each was read once, else every line under the other. Only the clearance has a mean: those of
 * push and air, each rounded, need not add up to it as shown.
 */
export function SpotsAcross({ take }: { take: Take }) {
  const { check, words } = useAtCheck();
  const { spots, mean } = take.evaluation;
  const isOnce = standingReadings(take).length === spots.length;
  if (!isOnce || spots.length < 2 || spots.length > mostAcross) return <ReadsTable take={take} />;
  const pushes = spots.map((spot) => spot.push);
  const airs = spots.map((spot) => spot.air);
  const rows =
    take.method === 'air'
      ? [
          { name: 'push', amounts: pushes },
          { name: 'air', amounts: airs },
        ]
      : [];
  return (
    <Table label="Lines read" density="reading">
      <thead>
        <tr>
          <ColumnHead />
          {spots.map((spot) => (
            <ColumnHead key={spot.spot} isNumber>
              {spotName(spot.spot, check.spots)}
            </ColumnHead>
          ))}
          <ColumnHead isNumber isWide>
            mean
          </ColumnHead>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, amounts }) => (
          <tr key={name}>
            <RowHead isQuiet>{name}</RowHead>
            {spots.map((spot, index) => (
              <Cell key={spot.spot} isNumber>
                {amounts[index] === null || amounts[index] === undefined ? '' : words.short(amounts[index])}
              </Cell>
            ))}
            <Cell isNumber isWide />
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <RowHead>{check.packId === null ? words.unit : 'clearance'}</RowHead>
          {spots.map((spot) => (
            <Cell key={spot.spot} isNumber>
              {words.short(spot.value)}
            </Cell>
          ))}
          <Cell isNumber isWide>
            {mean === null ? '' : words.full(mean)}
          </Cell>
        </tr>
      </tfoot>
    </Table>
  );
}
