// That a job was signed off, and what it went on without.
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { sayDayAndTime } from '../../text/say-date.ts';
import styles from './DoorOfJob.module.css';

/** Nothing while there is neither. */
export function SignedOff({ job }: { job: Job }) {
  const { signOff, passedOver } = job;
  if (!signOff && passedOver.length === 0) return null;
  return (
    <ul className={styles.lines} aria-label="Signed off and passed over">
      {signOff && (
        <li>
          Signed off {signOff.place} by {signOff.by}, {sayDayAndTime(signOff.at)}
          {signOff.note !== '' && `: ${signOff.note}`}
          {signOff.isOutdated && (
            <span className={styles.beneath}>
              Something was read, rebuilt or answered since: it has to be signed off again.
            </span>
          )}
        </li>
      )}
      {passedOver.map((each) => (
        <li key={`${each.at} ${each.stageName} ${each.need}`}>
          Left {each.stageName} without: {each.what}
          <span className={styles.beneath}>
            {each.reason}, {each.by}, {sayDayAndTime(each.at)}
          </span>
        </li>
      ))}
    </ul>
  );
}
