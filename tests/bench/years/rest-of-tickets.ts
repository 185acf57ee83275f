// What lies on a ticket beside its readings: calls, days promised, an estimate with its lines, a deposit, a core, photos.
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { dayAfter } from '../../../app/jobs/calendar-days.ts';
import type { BulkInserts } from '../../../main/shop/demo/history/bulk-inserts.ts';
import type { Draw } from '../seeded.ts';
import type { TicketOnFile } from './years-rest.ts';

type Ticket = { readonly ticket: TicketOnFile; readonly pictures: readonly string[]; readonly photos: number };

/** Two dozen pictures as large as a window makes them, shared by all tickets; answers what they are named after. */
export function keepPictures(file: string): string[] {
  const folder = join(dirname(file), 'photos');
  mkdirSync(folder, { recursive: true });
  const drawn = readFileSync(join(import.meta.dirname, '../../../main/shop/demo/pictures/case-circuits.jpg'));
  return Array.from({ length: 24 }, (_, index) => {
    const bytes = Buffer.concat([drawn, Buffer.alloc(250_000, index + 1)]);
    const sha256 = createHash('sha256').update(bytes).digest('hex');
    writeFileSync(join(folder, `${sha256}.jpg`), bytes);
    return sha256;
  });
}

export function writeTicket(inserts: BulkInserts, draw: Draw, { ticket, pictures, photos }: Ticket): void {
  const { jobId, customer, openedAt, by } = ticket;
  const day = openedAt.slice(0, 10);
  const said = [
    'Told what teardown showed and what it comes to; go ahead.',
    'Asks when it is ready; told Friday, the converter is still out.',
    'Will bring the cooler lines in himself.',
  ];
  for (let call = 0; call < 2; call += 1) {
    inserts.insert('calls', {
      job_id: jobId,
      direction: draw.whole(0, 1) === 0 ? 'we called' : 'they called',
      with_whom: customer,
      said: said[draw.whole(0, said.length - 1)] ?? '',
      logged_at: openedAt,
      logged_by: by,
    });
  }
  inserts.insert('promises', {
    job_id: jobId,
    promised_on: dayAfter(day, draw.whole(3, 6)),
    reason: '',
    promised_at: openedAt,
    promised_by: by,
  });
  writeEstimate(inserts, draw, ticket);
  if (draw.whole(1, 4) === 1) writeCore(inserts, draw, ticket);
  const count = Math.floor(jobId * photos) - Math.floor((jobId - 1) * photos);
  for (let photo = 0; photo < count; photo += 1) {
    const sha256 = pictures[(jobId + photo * 5) % pictures.length] ?? '';
    inserts.insert('photos', {
      job_id: jobId,
      sha256,
      small_sha256: sha256,
      width: 1000,
      height: 700,
      caption: 'Pan',
      check_id: null,
      is_in_report: photo === 0 ? 1 : 0,
      folder_name: `IMG_${jobId}_${photo}.jpg`,
      added_at: openedAt,
      added_by: by,
      removed_at: null,
    });
  }
}

const lines = [
  ['labour', 'Rebuild', 1800, 11_500],
  ['kit', 'Overhaul kit', 100, 21_500],
  ['part', 'Frictions', 1000, 790],
  ['part', 'Steels', 600, 400],
  ['part', 'Fluid', 1000, 850],
  ['sublet', 'Converter, rebuilt', 100, 24_000],
] as const;

function writeEstimate(inserts: BulkInserts, draw: Draw, { jobId, customer, openedAt, by }: TicketOnFile): void {
  const lineIds = lines.map(([kind, description, quantity_hundredths, unit_price_cents]) =>
    inserts.insert('job_lines', {
      job_id: jobId,
      kind,
      description,
      quantity_hundredths,
      unit_price_cents,
      unit_cost_cents: null,
      is_taxable: 0,
      batch_id: null,
      added_at: openedAt,
      added_by: by,
    }),
  );
  const total_cents = lines.reduce((sum, [, , quantity, price]) => sum + Math.round((quantity * price) / 100), 0);
  const estimateId = inserts.insert('estimates', {
    job_id: jobId,
    number: 1,
    what_was_found: 'Burnt frictions in the second pack.',
    tax_label: 'Tax',
    tax_per_hundred_thousand: 0,
    taxable_cents: 0,
    tax_cents: 0,
    total_cents,
    deposited_cents: 0,
    given_at: openedAt,
    given_by: by,
  });
  for (const [index, lineId] of lineIds.entries()) {
    inserts.insert('estimate_lines', { estimate_id: estimateId, position: index + 1, job_line_id: lineId });
  }
  inserts.insert('approvals', {
    estimate_id: estimateId,
    approved_by: customer,
    how: 'phone',
    up_to_cents: total_cents,
    approved_on: openedAt.slice(0, 10),
    note: '',
    recorded_at: openedAt,
    recorded_by: by,
  });
  inserts.insert('deposits', {
    job_id: jobId,
    amount_cents: draw.whole(200, 900) * 100,
    how: 'card',
    note: '',
    received_at: openedAt,
    received_by: by,
  });
}

/** All but those of the newest weeks were settled. */
function writeCore(inserts: BulkInserts, draw: Draw, { jobId, openedAt, by }: TicketOnFile): void {
  const coreId = inserts.insert('cores', {
    direction: 'to send back',
    what: 'Converter',
    quantity: 1,
    charge_cents: 12_000,
    due_on: dayAfter(openedAt.slice(0, 10), 30),
    batch_id: null,
    job_id: jobId,
    opened_at: openedAt,
    opened_by: by,
  });
  if (draw.whole(1, 100) <= 97) {
    inserts.insert('core_settlements', {
      core_id: coreId,
      how: 'sent back',
      note: '',
      settled_at: openedAt,
      settled_by: by,
    });
  }
}
