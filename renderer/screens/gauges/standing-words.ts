// Whether a gauge can be relied on, in words.
import type { Gauge } from '../../../app/gauges/register.contract.ts';
import { sayBusinessDay } from '../../text/part-words.ts';

/** "good until 18 Feb", "overdue since 3 Nov", "found out 20 Nov". */
export function standingWords({ standing, isRetired }: Pick<Gauge, 'standing' | 'isRetired'>): string {
  const { word, checkedOn, dueOn } = standing;
  if (isRetired) return 'retired';
  switch (word) {
    case 'good':
      return dueOn === null ? 'good' : `good until ${sayBusinessDay(dueOn)}`;
    case 'overdue':
      return `overdue since ${sayBusinessDay(dueOn ?? '')}`;
    case 'found out':
      return `found out ${sayBusinessDay(checkedOn ?? '')}`;
    case 'never checked':
      return 'never checked';
    case 'not judged':
      return 'no permitted error to judge by';
  }
}

/** Whether it is better left in its drawer. */
export function isDoubtful({ standing, isRetired }: Pick<Gauge, 'standing' | 'isRetired'>): boolean {
  return !isRetired && standing.word !== 'good' && standing.word !== 'not judged';
}
