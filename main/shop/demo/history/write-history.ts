// A planted history put into a shop file: past the services, because they would take hours, but under every CHECK and
// trigger of the schema, some hundreds of tickets a transaction.
import { openConnection } from '../../../database/connection.ts';
import { BulkInserts } from './bulk-inserts.ts';
import type { HistoryDesk } from './history-desk.ts';
import type { Planted } from './plant.ts';
import { TicketWriter } from './write-ticket.ts';

const ticketsATransaction = 250;

/** Answers how many rows went into each table; `seen` hears of every ticket that was written. */
export function writeHistory(
  file: string,
  history: Iterable<Planted>,
  desk: HistoryDesk,
  seen: (planted: Planted) => void = () => {},
): ReadonlyMap<string, number> {
  const connection = openConnection(file, 'write');
  try {
    const inserts = new BulkInserts(connection);
    const writer = new TicketWriter(inserts, desk);
    const write = connection.transaction((some: readonly Planted[]) => {
      for (const { ticket } of some) writer.write(ticket);
    });
    let some: Planted[] = [];
    for (const planted of history) {
      some.push(planted);
      seen(planted);
      if (some.length < ticketsATransaction) continue;
      write.immediate(some);
      some = [];
    }
    write.immediate(some);
    return inserts.counts;
  } finally {
    connection.close();
  }
}
