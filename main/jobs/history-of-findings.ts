// How the history of a job tells of a finding: written down, corrected, taken back, decided on, pinned to photos.
import { conditionWords, decisionWords, partWords } from '../../app/jobs/finding-words.ts';
import type { FindingCard } from '../../app/jobs/findings.contract.ts';
import type { Act } from '../../app/jobs/history.contract.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';
import type { FindingOnRecord } from './findings.service.ts';

type Told = Omit<Act, 'checkId'>;

/** Each card, each decision and each pinning as an act; the decision that came with the first card stands in the same line. */
export function tellFinding(finding: FindingOnRecord, settings: Settings): Told[] {
  const { earlier, earlierDecisions, decision, isWithdrawn, pinnings } = finding;
  const cards: readonly FindingCard[] = [...earlier, finding];
  const [atOnce, ...later] = [...earlierDecisions, decision];
  const say = (card: FindingCard) => `${partWords(card)}: ${conditionWords(card, settings)}`;
  const written = cards.map((card, index): Told => {
    const before = cards[index - 1];
    const { at, by, reason, note } = card;
    if (before && isWithdrawn && card === finding) {
      return { at, by, kind: 'finding', says: `${partWords(card)}: taken back`, more: reason };
    }
    if (before) {
      return { at, by, kind: 'finding', says: `${say(card)}, in place of ${say(before)}`, more: reason };
    }
    const isOpen = atOnce === undefined || atOnce.decision === 'not decided yet';
    const says = isOpen ? say(card) : `${say(card)}, ${decisionWords[atOnce.decision]}`;
    return { at, by, kind: 'finding', says, more: note };
  });
  const decided = later.map(
    (each): Told => ({
      at: each.at,
      by: each.by,
      kind: 'decision',
      says: `${partWords(finding)}: ${decisionWords[each.decision]}`,
      more: each.note,
    }),
  );
  const pinned = pinnings.map(
    ({ isPinned, caption, at, by }): Told => ({
      at,
      by,
      kind: 'photo',
      says: `${partWords(finding)}: photo ${isPinned ? 'pinned' : 'taken off'}`,
      more: caption,
    }),
  );
  return [...written, ...decided, ...pinned];
}
