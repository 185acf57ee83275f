// The history of an invented shop, ticket after ticket in the order they were opened, out of one seed. Its truth is
// known, so what the app finds in it can be held against what was planted.
import { dayAfter, monthsAfter } from '../../../../app/jobs/calendar-days.ts';
import { BatchesInUse } from './batches-in-use.ts';
import { drawCustomer, drawFault, drawUse, drawVehicle } from './door-words.ts';
import { type Draw, drawsFrom } from './draw.ts';
import { type FamilyToBuild, familiesToBuild } from './families.ts';
import { drawFate, type Fate } from './fate.ts';
import { type BuildTruth, drawAnswers, drawTakes, drawTruth, fluids, overridesOf, plantedPack } from './plan-build.ts';
import { drawReturn, type Return } from './plan-return.ts';
import type { PlantedPull, PlantedTicket } from './planted-ticket.ts';
import { type Effects, plantedTruth } from './planted-truth.ts';
import { LoosePlates } from './plates-in-turn.ts';
import { stepsOn } from './working-day.ts';

export type Planting = {
  readonly builds: number;
  readonly seed: number;
  readonly effects: Effects;
  /** Whether the shop builds one family of units or all of them. */
  readonly families: 'the first' | 'all';
  /** The last day the history knows; everything in it was delivered by then. */
  readonly until: string;
  /** Over how many days the builds are spread; left out: as many as `spanOf` says. */
  readonly over_days?: number;
};

export type Planted = {
  readonly ticket: PlantedTicket;
  /** What nobody sees: how the build truly is; of a unit that is back, how it was built. */
  readonly truth: BuildTruth;
  /** Why it is back; null for a build. */
  readonly fate: Fate | null;
};

/** From the ticket coming in until the unit leaves, at most. */
const longestVisit_days = 8;

/** Over how many days the builds are spread: a small shop’s handful of years, at most ten. */
export function spanOf(builds: number): number {
  return Math.min(3650, Math.max(1100, builds * 4));
}

export function familiesOf(which: Planting['families']): readonly FamilyToBuild[] {
  return which === 'all' ? familiesToBuild : familiesToBuild.slice(0, 1);
}

/** Nothing is kept but the units that are yet to come back, so a long history takes no more room than a short one. */
export function* plant(planting: Planting): Generator<Planted> {
  const { builds, seed, effects, until } = planting;
  const draw = drawsFrom(seed);
  const fates = drawsFrom(seed ^ 0x5bd1e995);
  const bench = new Bench(draw, planting);
  const span = planting.over_days ?? spanOf(builds);
  const first = dayAfter(until, -span);
  const lastOpened = span - longestVisit_days;
  let key = 0;
  const waiting: Return[] = [];
  const back = function* (day: string): Generator<Planted> {
    for (let next = waiting[0]; next !== undefined && next.on <= day; next = waiting[0]) {
      waiting.shift();
      key += 1;
      yield { ticket: { key, ...drawReturn(fates, next) }, truth: next.truth, fate: next.fate };
    }
  };
  for (let index = 0; index < builds; index += 1) {
    const opened = dayAfter(first, Math.floor(((index + draw.whole(0, 99) / 100) * lastOpened) / builds));
    yield* back(opened);
    key += 1;
    const { ticket, truth } = bench.build(key, index, opened);
    yield { ticket, truth, fate: null };
    const comesBack = returnOf(fates, { ticket, truth }, effects, until);
    if (comesBack) waiting.splice(placeFor(waiting, comesBack.on), 0, comesBack);
  }
  yield* back(until);
}

function placeFor(waiting: readonly Return[], day: string): number {
  const later = waiting.findIndex(({ on }) => on > day);
  return later === -1 ? waiting.length : later;
}

function returnOf(
  fates: Draw,
  { ticket, truth }: { ticket: PlantedTicket; truth: BuildTruth },
  effects: Effects,
  until: string,
): Return | null {
  const fate = drawFate(fates, truth, effects);
  const isNeverHeardOf = fates.happens(plantedTruth.neverHeardOf);
  const comesLate = fates.happens(0.3);
  const { delivery } = ticket;
  const began = delivery.inServiceOn ?? delivery.on;
  // Whatever lasts longer than a life is not put on a calendar.
  const on = fate.after > 20_000 ? null : dayAfter(began, Math.max(1, Math.ceil(fate.after)));
  if (on === null || isNeverHeardOf || on > dayAfter(until, -longestVisit_days)) return null;
  const isInWarranty = delivery.months !== null && on <= monthsAfter(began, delivery.months);
  // Out of warranty most go elsewhere.
  if (!isInWarranty && !comesLate) return null;
  return { on, built: ticket, truth, fate, isInWarranty, isFresh: on > dayAfter(until, -60) };
}

/** The bench with what lies on it: open batches and loose plates. */
class Bench {
  readonly #draw: Draw;
  readonly #builds: number;
  readonly #until: string;
  readonly #families: readonly FamilyToBuild[];
  readonly #allShares: number;
  readonly #batches = new BatchesInUse();
  readonly #plates: LoosePlates;
  readonly #built = new Map<string, number>();
  #badMark: string | null = null;

  constructor(draw: Draw, { builds, until, families }: Planting) {
    this.#draw = draw;
    this.#builds = builds;
    this.#until = until;
    this.#families = familiesOf(families);
    this.#allShares = this.#families.reduce((sum, { share }) => sum + share, 0);
    this.#plates = new LoosePlates(draw);
  }

  build(key: number, index: number, opened: string): { ticket: PlantedTicket; truth: BuildTruth } {
    const draw = this.#draw;
    const family = this.#familyOf();
    const hand = draw.byShare(plantedTruth.shareOfHands);
    const use = drawUse(draw);
    const customer = drawCustomer(draw, index + 1);
    const unit = {
      key: index + 1,
      serial: `${family.name}-${opened.slice(2, 4)}-${String(index + 1).padStart(4, '0')}`,
      vehicle: drawVehicle(draw, use),
      use,
    };
    const built = dayAfter(opened, 3);
    const final = stepsOn(built, 12);
    const frictions = this.#frictionsFor(family, built, { hand, at: final() });
    const truth = drawTruth(draw, { family, hand, use, hasBadFrictions: frictions.batch.mark === this.#badMark });
    const mockUps = truth.isReadByFeeler ? null : this.#plates.mockUpsFor(truth, key, opened, final());
    const takes = drawTakes(draw, truth, stepsOn(dayAfter(opened, 1), 15), final);
    const leaves = dayAfter(opened, draw.whole(4, longestVisit_days - 1));
    const hasDistance = use !== 'competition' && draw.happens(0.8);
    const distance = hasDistance ? { amount: draw.whole(20, 190) * 1000, unit: 'miles' as const } : null;
    const answers = drawAnswers(draw, truth, final);
    const overrides = overridesOf(truth, final);
    const isBegunKnown = draw.happens(0.7);
    const begun = dayAfter(leaves, draw.whole(0, 10));
    const ticket: PlantedTicket = {
      key,
      kind: 'build',
      family: family.name,
      customer,
      unit,
      opened: { hand: 0, at: stepsOn(opened)() },
      complaint: drawFault(draw),
      distance,
      stages: [
        { name: 'Checked in', hand: 0, at: stepsOn(opened)() },
        { name: 'Teardown', hand, at: stepsOn(dayAfter(opened, 1), 14)() },
        { name: 'Build', hand, at: stepsOn(built, 12)() },
        { name: 'Closed', hand: 0, at: stepsOn(leaves)() },
      ],
      mockUps: mockUps?.mockUps ?? [],
      takes: mockUps ? mockUps.readInto(takes) : takes,
      answers,
      pulls: [frictions, this.#fluidFor(truth, built, { hand, at: final() })],
      findings: [],
      overrides,
      signedOff: { hand, at: final() },
      delivery: {
        to: customer.name,
        on: leaves,
        distance,
        inServiceOn: isBegunKnown && begun <= this.#until ? begun : null,
        months: use === 'competition' ? null : plantedTruth.warrantyMonths[use],
        passes: use === 'competition' ? 60 : null,
        hand: 0,
        at: stepsOn(leaves)(),
      },
      comeback: null,
    };
    return { ticket, truth };
  }

  #familyOf(): FamilyToBuild {
    const family = this.#families[this.#draw.byShare(this.#families.map(({ share }) => share))];
    if (!family) throw new Error('there is no family to build');
    return family;
  }

  /** From a batch that lasts a tenth of the family’s builds, at least six and at most sixty. */
  #frictionsFor(family: FamilyToBuild, day: string, by: { hand: number; at: string }): PlantedPull {
    const pack = family.packs[plantedPack];
    if (!pack) throw new Error(`${family.name} has no second pack`);
    const ofFamily = (this.#builds * family.share) / this.#allShares;
    const lasts = Math.min(60, Math.max(6, Math.round(ofFamily / 10)));
    const { batch, isNew } = this.#batches.take(
      {
        number: `${family.name}-FR-${pack.pack.name.slice(0, 2).toUpperCase()}20`,
        description: `${pack.pack.name} friction, high energy`,
        kind: 'friction',
      },
      { quantity: pack.frictions, size: lasts * pack.frictions, day },
    );
    const before = this.#built.get(family.name) ?? 0;
    this.#built.set(family.name, before + 1);
    const isDue = family === familiesToBuild[0] && before >= plantedTruth.badBatchAt * ofFamily;
    if (isNew && isDue && this.#badMark === null) this.#badMark = batch.mark;
    return { batch, quantity: pack.frictions, ...by };
  }

  #fluidFor({ fluid }: BuildTruth, day: string, by: { hand: number; at: string }): PlantedPull {
    const number = fluid === fluids[0] ? 'FLUID-OR' : 'FLUID-T6';
    const { batch } = this.#batches.take(
      { number, description: `Transmission fluid, ${fluid}`, kind: 'fluid' },
      { quantity: 10, size: 200, day },
    );
    return { batch, quantity: 10, ...by };
  }
}
