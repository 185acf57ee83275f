// Deliveries that do not stand any more: corrected, or taken back.
import type { DeliveryOfJob } from '../../../app/jobs/delivery.contract.ts';
import { sayDayAndTime } from '../../text/say-date.ts';
import styles from './DeliveryScreen.module.css';
import { sayBusinessDay } from './days.ts';

/** Nothing while there is none. */
export function TakenBack({ earlier }: { earlier: DeliveryOfJob['earlierDeliveries'] }) {
  if (earlier.length === 0) return null;
  return (
    <ul className={styles.earlier} aria-label="Earlier deliveries">
      {earlier.map((each) => (
        <li key={each.at}>
          {each.deliveredOn === null ? (
            `Taken back: ${each.reason}`
          ) : (
            <s>
              {each.deliveredTo}, {sayBusinessDay(each.deliveredOn)}
            </s>
          )}{' '}
          {each.by}, {sayDayAndTime(each.at)}
        </li>
      ))}
    </ul>
  );
}
