// What to swap in all open packs of a unit at once: pack after pack as one would by hand, and together as the optimiser
// shares the same plates out, with what the one gains over the other.
import { assert } from '../base/assert.ts';
import { formatLength } from '../quantities/format-amount.ts';
import type { Settings } from '../shop/shop.contract.ts';
import { chanceWords } from './chance-words.ts';
import type { SwapOption, UnitPlan } from './packs.contract.ts';
import { enough, planSwaps } from './swap-plan.ts';
import type { PackToPlan } from './swap-search.ts';
import { targetOf } from './target-of-pack.ts';
import { sharePlates } from './unit-sharing.ts';

export type UnitObjective = 'sum' | 'largest';

const onlyNearest = 'Only the nearest: shared out like this not every pack comes within its limits.';

type Planned = { readonly option: SwapOption | null; readonly problem: string | null };

/**
 * The open packs of one unit, in the order they are worked on. `pack after pack` gives each the fewest swaps that do,
 * from what the ones before it left. `together` is exact for the measured heights, see `selectPlatesJointly`; a pack
 * that shares its plates with no other is planned alone in both. No plate is named twice.
 */
export function planUnit(asked: readonly PackToPlan[], objective: UnitObjective): UnitPlan {
  const [first] = asked;
  assert(first !== undefined, 'at least one pack is planned');
  const inOrder = packAfterPack(asked, new Map());
  const used = new Map<string, number>();
  const shared = sharersOf(asked).map((packs) => sharePlates(packs, objective));
  for (const { options } of shared) for (const option of options.values()) take(used, option);
  const joint = new Map(shared.flatMap(({ options }) => [...options]));
  const isShared = (pack: PackToPlan) => shared.some(({ packIds }) => packIds.includes(pack.pack.packId));
  const alone = asked.filter((pack) => !isShared(pack));
  const planned = packAfterPack(alone, used);
  const together = asked.map((pack): Planned => {
    if (!isShared(pack)) return planned[alone.indexOf(pack)]!;
    const option = joint.get(pack.pack.packId) ?? null;
    const sharing = shared.find(({ packIds }) => packIds.includes(pack.pack.packId));
    if (!option) return { option, problem: sharing?.sentence ?? null };
    return { option, problem: sharing?.isOnlyNearest ? onlyNearest : null };
  });
  const plans = { inOrder: measure(asked, inOrder), together: measure(asked, together) };
  return {
    packs: asked.map((pack, index) => ({
      packId: pack.pack.packId,
      name: pack.pack.name,
      target_nm: targetOf(pack),
      inOrder: inOrder[index]!,
      together: together[index]!,
    })),
    sharing: shared.map(({ packIds, status, sentence, order }) => ({
      packs: asked.filter((pack) => packIds.includes(pack.pack.packId)).map(({ pack }) => pack.name),
      status,
      sentence,
      order: [...order],
    })),
    ...adviceOn(asked, inOrder, together, plans, objective, shared.length > 0),
  };
}

function packAfterPack(asked: readonly PackToPlan[], used: Map<string, number>): Planned[] {
  return asked.map((pack): Planned => {
    const plan = planSwaps(without(pack, used));
    if (!plan.ok) return { option: null, problem: plan.refusal.message };
    const option = plan.value.options.find(({ changes }) => changes === plan.value.adviseChanges) ?? null;
    if (option) take(used, option);
    const problem =
      option && plan.value.buy === null ? null : [plan.value.advice, plan.value.buy].filter(Boolean).join(' ');
    return { option, problem };
  });
}

const sourceKey = (from: SwapOption['in'][number]['from']): string | null =>
  'pieceId' in from ? `piece ${from.pieceId}` : 'canId' in from ? `can ${from.canId}` : null;

function take(used: Map<string, number>, option: SwapOption): void {
  for (const { from } of option.in) {
    const key = sourceKey(from);
    if (key !== null) used.set(key, (used.get(key) ?? 0) + 1);
  }
}

function without(pack: PackToPlan, used: ReadonlyMap<string, number>): PackToPlan {
  return {
    ...pack,
    loosePieces: pack.loosePieces.filter(({ pieceId }) => !used.has(`piece ${pieceId}`)),
    cans: pack.cans.flatMap((can) => {
      const count = can.count - (used.get(`can ${can.canId}`) ?? 0);
      return count > 0 ? [{ ...can, count }] : [];
    }),
  };
}

/** Packs whose adjusters are all of one kind and outline, and that this holds for at least two of. */
function sharersOf(asked: readonly PackToPlan[]): PackToPlan[][] {
  const groups = Map.groupBy(asked, ({ pack, records }) => {
    const names = new Set(
      pack.slots.filter((slot) => slot.isAdjuster).map(({ kind, outline }) => `${kind} ${outline}`),
    );
    return names.size === 1 && records.some(({ read }) => read) ? [...names][0]! : '';
  });
  return [...groups].flatMap(([name, packs]) => (name !== '' && packs.length > 1 ? [packs] : []));
}

type Measured = {
  readonly sum: number;
  readonly largest: number;
  readonly swaps: number;
  readonly leastChance: number;
};

/** null where a pack has no plan. */
function measure(asked: readonly PackToPlan[], planned: readonly Planned[]): Measured | null {
  const options = planned.flatMap(({ option }) => (option ? [option] : []));
  if (options.length < asked.length) return null;
  const off = options.map((option, index) => Math.abs(option.predicted_nm - targetOf(asked[index]!)));
  return {
    sum: off.reduce((sum, each) => sum + each, 0),
    largest: Math.max(...off),
    swaps: options.reduce((sum, { changes }) => sum + changes, 0),
    leastChance: Math.min(...options.map(({ probabilityInBand }) => probabilityInBand ?? 0)),
  };
}

function adviceOn(
  asked: readonly PackToPlan[],
  inOrder: readonly Planned[],
  together: readonly Planned[],
  plans: { readonly inOrder: Measured | null; readonly together: Measured | null },
  objective: UnitObjective,
  isSharing: boolean,
): Pick<UnitPlan, 'advised' | 'advice' | 'gain'> {
  const gain = isSharing ? gainOf(asked, inOrder, together, plans, objective) : null;
  const chance = (plan: Measured) => chanceWords(plan.leastChance);
  const one = plans.inOrder;
  if (one && one.leastChance >= enough) {
    const advice =
      one.swaps === 0
        ? `Stop here: every pack is in the band as it sits, the least sure of them ${chance(one)}.`
        : `${swapsWords(one.swaps)} and stop there: every pack is then in the band, the least sure of them ${chance(one)}.`;
    return { advised: 'inOrder', advice, gain };
  }
  const both = plans.together;
  if (both && (one === null || both.leastChance > one.leastChance)) {
    return {
      advised: 'together',
      advice: `${swapsWords(both.swaps)}, shared out together: the least sure pack is then in the band ${chance(both)}.`,
      gain,
    };
  }
  const advice = one
    ? `${swapsWords(one.swaps)} do best with what is at hand: the least sure pack is then in the band ${chance(one)}.`
    : 'Not every pack can be planned with what is at hand.';
  return { advised: 'inOrder', advice, gain };
}

/** "Forward first would leave Direct at 47.5; together it comes to 45.5." */
function gainOf(
  asked: readonly PackToPlan[],
  inOrder: readonly Planned[],
  together: readonly Planned[],
  { inOrder: one, together: both }: { readonly inOrder: Measured | null; readonly together: Measured | null },
  objective: UnitObjective,
): string | null {
  if (!one || !both) return null;
  const less = objective === 'sum' ? one.sum - both.sum : one.largest - both.largest;
  const { settings } = asked[0]!;
  // Half a nanometre: sums of whole nanometres that came through floating point.
  if (less <= 0.5) return 'Shared out together they come no nearer.';
  const nearer = asked.map((pack, index) => {
    const off = (planned: readonly Planned[]) => Math.abs((planned[index]!.option?.predicted_nm ?? 0) - targetOf(pack));
    return off(inOrder) - off(together);
  });
  const most = nearer.indexOf(Math.max(...nearer));
  const at = (planned: readonly Planned[]) => write(settings, planned[most]!.option?.predicted_nm ?? 0);
  const name = asked[most]!.pack.name;
  const first = most > 0 ? `${asked[0]!.pack.name} first` : 'Pack after pack';
  const extra = both.swaps - one.swaps;
  const cost = extra > 0 ? ` for ${swapsWords(extra).toLowerCase()} more` : '';
  return `${first} would leave ${name} at ${at(inOrder)}; together it comes to ${at(together)}${cost}.`;
}

function swapsWords(count: number): string {
  return count === 1 ? 'One swap' : `${count === 0 ? 'No' : count} swaps`;
}

function write(settings: Settings, length_nm: number): string {
  return formatLength(length_nm, settings.lengthUnit, undefined, settings.decimalMark);
}
