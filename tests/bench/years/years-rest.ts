// What a planted history leaves out and a shop of many years has: gauges and their checks, what tickets hold beside
// readings, the shelves. Written in bulk, under the same CHECKs and triggers as any hand.
import { openConnection } from '../../../main/database/connection.ts';
import { BulkInserts } from '../../../main/shop/demo/history/bulk-inserts.ts';
import { seeded } from '../seeded.ts';
import { writeGauges } from './rest-of-gauges.ts';
import { writeShelves } from './rest-of-shelves.ts';
import { keepPictures, writeTicket } from './rest-of-tickets.ts';
import type { Size } from './years-shop.ts';

export type TicketOnFile = {
  readonly jobId: number;
  readonly familyId: number;
  readonly customer: string;
  readonly openedAt: string;
  readonly by: number;
};

export function writeTheRest(file: string, size: Size): void {
  const connection = openConnection(file, 'write');
  connection.pragma('synchronous = off');
  const inserts = new BulkInserts(connection);
  const draw = seeded(7);
  const tickets = connection
    .prepare(
      `select job_id as jobId, family_id as familyId, name as customer, opened_at as openedAt, opened_by as by
       from jobs join units using (unit_id) join customers using (customer_id) order by job_id`,
    )
    .all() as TicketOnFile[];
  const inLots = (of: readonly TicketOnFile[], write: (ticket: TicketOnFile) => void) => {
    const lot = connection.transaction((some: readonly TicketOnFile[]) => some.forEach(write));
    for (let from = 0; from < of.length; from += 250) lot(of.slice(from, from + 250));
  };
  const pictures = keepPictures(file);
  const pull = connection.transaction(() => writeShelves(inserts, draw, size, tickets))();
  inLots(tickets, (ticket) => {
    writeTicket(inserts, draw, { ticket, pictures, photos: size.photosOfTicket });
    pull(ticket);
  });
  connection.transaction(() => writeGauges(connection, inserts, size.years))();
  connection.pragma('wal_checkpoint(truncate)');
  connection.close();
}
