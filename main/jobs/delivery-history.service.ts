// What the history of a job tells of its delivery, its warranty and of a small job that grew.
import type { Act } from '../../app/jobs/history.contract.ts';
import { distanceWords, termsWords, warrantyWords } from '../../app/jobs/warranty.ts';
import { writeDay } from '../../app/papers/dates.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';
import type { Reading } from '../database/tables.ts';
import { listDeliveries, listWarranties } from './delivery.repository.ts';
import { standingExtent } from './extent.repository.ts';

type Told = Omit<Act, 'checkId'>;

export async function deliveryActs(reading: Reading, jobId: number, { decimalMark }: Settings): Promise<Told[]> {
  const deliveries = (await listDeliveries(reading, jobId)).toReversed();
  const warranties = (await listWarranties(reading, jobId)).toReversed();
  const extent = await standingExtent(reading, jobId);
  return [
    ...(extent?.widened
      ? [told(extent.widened, 'decision', `No longer a ${extent.name}: the whole rebuild`, extent.widened.reason)]
      : []),
    ...deliveries.map((each, index) => {
      if (each.deliveredOn === null) return told(each, 'delivery', 'Delivery taken back', each.reason);
      const { deliveredTo, deliveredOn, distance, handedOverBy } = each;
      const says = `Handed over to ${deliveredTo} on ${writeDay(deliveredOn)}`;
      const isCorrected = index > 0 && deliveries[index - 1]?.deliveredOn !== null;
      const on = distance === null ? '' : `${distanceWords(distance, decimalMark)} on it`;
      const more = [on, `by ${handedOverBy}`, each.reason].filter((part) => part !== '').join(', ');
      return told(each, 'delivery', isCorrected ? `${says}, corrected` : says, more);
    }),
    ...warranties.map((each) => {
      const words = warrantyWords(each, { decimalMark, sayDay: writeDay });
      const isOpen = each.inServiceOn === null;
      const says = isOpen
        ? `Warranty, not in service yet: ${termsWords(each.terms, decimalMark)}`
        : `Warranty, in service from ${writeDay(each.inServiceOn ?? '')}: ${words}`;
      return told(each, 'delivery', words === 'no warranty' ? 'Without warranty' : says, each.reason);
    }),
  ];
}

function told({ at, by }: { at: string; by: string }, kind: Act['kind'], says: string, more: string): Told {
  return { at, by, kind, says, more };
}
