// What the history of a job tells of comebacks: on the ticket of the return all that was said, on the build that it came back.
import type { Act } from '../../app/jobs/history.contract.ts';
import { distanceWords } from '../../app/jobs/warranty.ts';
import { writeDay } from '../../app/papers/dates.ts';
import { formatMoney } from '../../app/quantities/money.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';
import type { Reading } from '../database/tables.ts';
import { listCalls, listUnitsToCall } from './calls.repository.ts';
import * as repository from './log.repository.ts';

type Told = Omit<Act, 'checkId'>;
type Logged = Awaited<ReturnType<typeof repository.listLoggedOn>>[number];
type Card = Awaited<ReturnType<typeof repository.listCards>>[number];

export async function comebackActs(reading: Reading, jobId: number, settings: Settings): Promise<Told[]> {
  const acts: Told[] = [];
  for (const comeback of await repository.listLoggedOn(reading, jobId)) {
    const cards = (await repository.listCards(reading, comeback.comeback_id)).toReversed();
    if (comeback.built_job_id === jobId) acts.push(...tellBuild(comeback, cards));
    else acts.push(...tellCards(comeback, cards, settings), ...(await causeActs(reading, comeback.comeback_id)));
  }
  return [...acts, ...(await callActs(reading, jobId))];
}

/** On the build: that it came back, and that it did not after all. */
function tellBuild({ number, logged_at, initials }: Logged, cards: readonly Card[]): Told[] {
  const [first] = cards;
  const says = `Came back on ${writeDay(first?.cameBackOn ?? '')} as job ${number}`;
  return [
    { at: logged_at, by: initials, kind: 'comeback', says, more: first?.customerSays ?? '' },
    ...cards.slice(1).flatMap((card, index): Told[] => {
      if (card.outcome === cards[index]?.outcome) return [];
      const { at, by, outcome, reason } = card;
      return [{ at, by, kind: 'comeback', says: `Comeback as job ${number}: ${outcome}`, more: reason }];
    }),
  ];
}

function tellCards(comeback: Logged, cards: readonly Card[], settings: Settings): Told[] {
  return cards.map((card, index): Told => {
    const { at, by, customerSays, note, reason } = card;
    const what = cardWords(card, settings);
    if (index > 0) return { at, by, kind: 'comeback', says: `Comeback: ${what}`, more: reason || note };
    const says = `Logged as a comeback of job ${comeback.built_number}: ${what}`;
    return { at, by, kind: 'comeback', says, more: customerSays };
  });
}

function cardWords({ cameBackOn, distance, outcome, covered, cost_cents }: Card, { decimalMark }: Settings): string {
  return [
    `back on ${writeDay(cameBackOn)}`,
    distance === null ? '' : `${distanceWords(distance, decimalMark)} on it`,
    `outcome ${outcome}`,
    covered === 'not decided yet' ? 'cover not decided yet' : covered,
    cost_cents === null ? '' : `cost ${formatMoney(cost_cents, decimalMark)}`,
  ]
    .filter((part) => part !== '')
    .join(', ');
}

async function causeActs(reading: Reading, comebackId: number): Promise<Told[]> {
  const said = (await repository.listCauses(reading, comebackId)).toReversed();
  return said.map(({ at, by, cause, packName, certainty, note }): Told => {
    const where = packName ?? 'whole unit';
    return { at, by, kind: 'comeback', says: `Cause ${cause}, ${where}: ${certainty}`, more: note };
  });
}

async function callActs(reading: Reading, jobId: number): Promise<Told[]> {
  const units = (await listUnitsToCall(reading, jobId)).toReversed();
  const calls = (await listCalls(reading, jobId)).toReversed();
  return [
    ...units.map((unit): Told => {
      const { added_at, initials, what, reason, what_to_check } = unit;
      const more = [reason, what_to_check && `to check: ${what_to_check}`].filter(Boolean).join('; ');
      return { at: added_at, by: initials, kind: 'comeback', says: `To be called: ${what}`, more };
    }),
    ...calls.map(({ called_at, initials, what, came_of_it, note }): Told => {
      return { at: called_at, by: initials, kind: 'comeback', says: `Called about ${what}: ${came_of_it}`, more: note };
    }),
  ];
}
