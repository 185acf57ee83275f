// Counts, shares, chances and times of the fleet as its screen writes them.

import { count, sayTime } from '../../../app/comebacks/curve-words.ts';
import type { FactorTold, FleetAnswer } from '../../../app/comebacks/fleet.contract.ts';
import { intervalWords, sayChance, sayTimes } from '../../../app/comebacks/fleet-words.ts';
import type { Clock } from '../../../app/comebacks/follow-builds.ts';
import type { DecimalMark } from '../../../app/quantities/format-amount.ts';

/** Interval, chances and counts behind a factor. */
export function evidence(factor: FactorTold, tried: number, decimalMark: DecimalMark): string {
  const { by, interval, p, adjusted, builds, events, unrecorded } = factor;
  const ratio = by === 'cox' ? 'interval' : `odds ${sayTimes(factor.ratio, decimalMark)}, interval`;
  const left = unrecorded === 0 ? '' : `; never recorded of ${unrecorded} more`;
  return `${ratio} ${intervalWords(interval, decimalMark)} times; p ${sayChance(p, decimalMark)}, ${sayChance(adjusted, decimalMark)} for ${tried} tried; ${count(builds, 'build')}, ${events} came back${left}`;
}

/** Who was followed, who was not, and what that assumes. */
export function followedSentences(answer: FleetAnswer, clock: Clock, decimalMark: DecimalMark): string[] {
  const { selected, followed, events, leftOut, fromDelivery, usePerDay, guessed } = answer;
  return [
    `${count(selected, 'delivered build')}, ${followed} of them followed, ${events} came back.`,
    ...leftOut.map(({ why, builds }) =>
      why === 'no term of months'
        ? `${count(builds, 'build')} left out: without a term of months nobody knows how long they would have come back to us.`
        : `${count(builds, 'build')} left out: what was on them at delivery or later is not known.`,
    ),
    ...(usePerDay && guessed > 0
      ? [
          `The use of ${count(guessed, 'build')} is a guess from ${sayTime(usePerDay.median, decimalMark)} ${clock} a day, the middle of ${count(usePerDay.builds, 'build')} whose use is known.`,
        ]
      : []),
    ...(fromDelivery > 0
      ? [`${count(fromDelivery, 'build')} counted from delivery, because nobody said when they went into service.`]
      : []),
    'A build is followed to the end of its warranty, another visit or today: until then it would have come back to us.',
  ];
}
