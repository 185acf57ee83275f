// Every line of a take as it was typed, in order. What was misread stays, struck through, with why and by whom.
import type { CheckOfJob } from '../../../app/jobs/jobs.contract.ts';
import type { Reading, Take } from '../../../app/readings/readings.contract.ts';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { sayDayAndTime } from '../../text/say-date.ts';
import styles from './ReadingsTable.module.css';

export function ReadingsTable({ take, check }: { take: Take; check: CheckOfJob }) {
  const degreesOf = (spot: number) => (check.spots === 1 ? '' : `${Math.round(((spot - 1) * 360) / check.spots)}°`);
  return (
    <>
      <Table label="Readings as typed" density="dense">
        <thead>
          <tr>
            <ColumnHead>spot</ColumnHead>
            <ColumnHead>typed</ColumnHead>
            <ColumnHead>read as</ColumnHead>
            <ColumnHead isNumber>by</ColumnHead>
          </tr>
        </thead>
        <tbody>
          {take.readings.map((reading) => (
            <tr key={reading.readingId}>
              <RowHead>
                {reading.spot} <span className="quiet">{degreesOf(reading.spot)}</span>
              </RowHead>
              <Cell>
                <Typed reading={reading} />
              </Cell>
              <Cell>
                <Meaning reading={reading} all={take.readings} />
              </Cell>
              <Cell isNumber isQuiet>
                {reading.by}, {sayDayAndTime(reading.at)}
              </Cell>
            </tr>
          ))}
        </tbody>
      </Table>
      {take.notes.length > 0 && (
        <ul className="small">
          {take.notes.map((note) => (
            <li key={`${note.spot} ${note.what} ${note.at}`}>
              Spot {note.spot}: {note.what} ({note.by}, {sayDayAndTime(note.at)})
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

function Typed({ reading }: { reading: Reading }) {
  const typed = <span className={styles.typed}>{reading.typed}</span>;
  return reading.supersededById === null ? typed : <s>{typed}</s>;
}

function Meaning({ reading, all }: { reading: Reading; all: readonly Reading[] }) {
  if (reading.supersededById === null) {
    return reading.supersedesId === null ? reading.saidBack : `${reading.saidBack}, in place of the misread line`;
  }
  const right = all.find((each) => each.readingId === reading.supersededById);
  return (
    <>
      <s>{reading.saidBack}</s> misread: {right?.reason} ({right?.by})
    </>
  );
}
