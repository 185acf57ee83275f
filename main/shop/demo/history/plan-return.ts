// A unit that is back: as it was found, what teardown showed, and what came of it.
import { dayAfter } from '../../../../app/jobs/calendar-days.ts';
import type { Draw } from './draw.ts';
import type { Fate } from './fate.ts';
import { type BuildTruth, checkNamed, coolerCheck } from './plan-build.ts';
import type { PlantedComeback, PlantedFinding, PlantedTake, PlantedTicket } from './planted-ticket.ts';
import { airTake, singleTake } from './typed-takes.ts';
import { stepsOn } from './working-day.ts';

/** A unit that will be back, kept until its day. */
export type Return = {
  readonly on: string;
  readonly built: PlantedTicket;
  readonly truth: BuildTruth;
  readonly fate: Fate;
  readonly isInWarranty: boolean;
  /** Near the end of the history: nobody has decided yet what it was. */
  readonly isFresh: boolean;
};

const complaints: Readonly<Record<Fate['what'], readonly string[]>> = {
  wear: ['Slips again under load.', 'Flares on the upshift, worse by the week.', 'Burnt smell, slips uphill.'],
  material: ['Shudders and slips, dark fluid.', 'Slips in every gear it drives with this pack.'],
  leak: ['Slow to take a gear when hot.', 'Falls out of gear at a stop when hot.'],
  cooling: ['Runs hot, then slips.', 'Hot with the trailer, fluid brown.'],
  other: ['Bangs into second.', 'Will not come out of first.', 'Stalls at the lights.'],
  'not ours': ['Code for the engine’s own sensor.', 'Noise from the rear axle.', 'Said to slip, drives right.'],
  'later job': ['Drips at the front.', 'Pan seeps.'],
};

/** Everything of the new ticket but its number and its place in the book. */
export function drawReturn(
  draw: Draw,
  { on, built, truth, fate, isInWarranty, isFresh }: Return,
): Omit<PlantedTicket, 'key'> {
  const isReseal = fate.what === 'later job';
  const asFound = stepsOn(dayAfter(on, 1));
  const repaired = stepsOn(dayAfter(on, 3));
  const takes = isReseal ? [] : drawAsFound(draw, truth, fate, asFound);
  const findings = findingsOf(draw, truth, fate, asFound);
  const pack = fate.pack === null ? undefined : truth.family.packs[fate.pack];
  if (pack && !isReseal)
    takes.push(
      airTake(draw, pack, {
        clearance: draw.normal(pack.aim, 1.5),
        plates: truth.plates,
        isRepeated: false,
        hand: 0,
        at: repaired(),
        phase: 'final',
      }),
    );
  const cooler = checkNamed(truth.family, coolerCheck);
  if (cooler) takes.push(singleTake(cooler, { value: 1.4, decimals: 2, hand: 0, at: repaired(), phase: 'final' }));
  const signedOff = { hand: 0, at: repaired() };
  const leaves = dayAfter(on, 5);
  const milesSince = draw.happens(0.7) ? draw.whole(15, 60) * Math.max(1, Math.round(fate.after)) : null;
  const distance =
    built.delivery.distance === null || milesSince === null
      ? null
      : { ...built.delivery.distance, amount: built.delivery.distance.amount + milesSince };
  return {
    kind: isReseal ? 'reseal' : 'comeback',
    family: built.family,
    customer: built.customer,
    unit: built.unit,
    opened: { hand: 0, at: stepsOn(on)() },
    complaint: draw.oneOf(complaints[fate.what]),
    distance,
    stages: [
      { name: 'Checked in', hand: 0, at: stepsOn(on)() },
      ...(isReseal ? [] : [{ name: 'Teardown', hand: 0, at: stepsOn(dayAfter(on, 1))() }]),
      { name: 'Build', hand: 0, at: stepsOn(dayAfter(on, 2))() },
      { name: 'Closed', hand: 0, at: stepsOn(leaves)() },
    ],
    mockUps: [],
    takes,
    answers: [],
    pulls: [],
    findings,
    overrides: [],
    signedOff,
    // What was promised with the build runs on; nothing further is.
    delivery: {
      to: built.customer.name,
      on: leaves,
      distance,
      inServiceOn: null,
      months: null,
      passes: null,
      hand: 0,
      at: stepsOn(leaves)(),
    },
    comeback: isReseal ? null : comebackOf(draw, { on, built, truth, fate, isInWarranty, isFresh }),
  };
}

function drawAsFound(draw: Draw, truth: BuildTruth, fate: Fate, at: () => string): PlantedTake[] {
  const when = { hand: 0, phase: 'as found' as const };
  const { family, plates } = truth;
  const takes: PlantedTake[] = [];
  const pack = fate.pack === null ? undefined : family.packs[fate.pack];
  if (pack && fate.pack !== null) {
    // What wore off the frictions is clearance now.
    const worn = fate.what === 'wear' || fate.what === 'material' ? Math.abs(draw.normal(14, 4)) : 1;
    const clearance = (truth.clearances[fate.pack] ?? pack.aim) + worn;
    takes.push(airTake(draw, pack, { ...when, at: at(), clearance, plates, isRepeated: false }));
    const drop = (truth.leakDowns[fate.pack] ?? 3) + (fate.what === 'leak' ? draw.whole(6, 14) : 1);
    takes.push(singleTake(pack.circuit, { ...when, at: at(), value: drop, decimals: 0 }));
  }
  const cooler = checkNamed(family, coolerCheck);
  const flow = truth.coolerFlow - (fate.what === 'cooling' ? draw.whole(25, 60) / 100 : 0.02);
  if (cooler) takes.push(singleTake(cooler, { ...when, at: at(), value: flow, decimals: 2 }));
  return takes;
}

function findingsOf(draw: Draw, { family, fluid }: BuildTruth, fate: Fate, at: () => string): PlantedFinding[] {
  const pack = fate.pack === null ? null : (family.packs[fate.pack]?.pack.name ?? null);
  const found = (finding: Omit<PlantedFinding, 'hand' | 'at'>): PlantedFinding => ({ ...finding, hand: 0, at: at() });
  const friction = (condition: PlantedFinding['condition'], thickness: number) =>
    found({
      part: 'Friction',
      pack,
      place: draw.oneOf(['piston end', 'middle', 'ring end'] as const),
      condition,
      thickness: thickness.toFixed(1),
    });
  const whole = { pack: null, place: null, thickness: '' };
  switch (fate.what) {
    case 'wear':
      return [friction('burnt', draw.normal(68, 2)), friction('worn', draw.normal(72, 1.5))];
    case 'material':
      return [friction('flaked', draw.normal(66, 3)), friction('flaked', draw.normal(67, 3))];
    case 'leak':
      return [found({ ...whole, part: 'Sealing rings', pack, condition: 'leaking' })];
    case 'cooling':
      return [
        found({ ...whole, part: 'Cooler', condition: 'stuck' }),
        found({ ...whole, part: fluid, condition: 'burnt' }),
      ];
    default:
      return [];
  }
}

function comebackOf(draw: Draw, { on, built, truth, fate, isInWarranty, isFresh }: Return): PlantedComeback {
  const isOurs = fate.what !== 'not ours';
  const isOpen = isOurs && isFresh && draw.happens(0.3);
  const pack = fate.pack === null ? null : (truth.family.packs[fate.pack]?.pack.name ?? null);
  const notOurs = draw.happens(0.6) ? ('not our part' as const) : ('no fault found' as const);
  return {
    built: built.key,
    cameBackOn: on,
    outcome: isOpen ? 'not known yet' : isOurs ? 'ours' : notOurs,
    covered: isOpen ? 'not decided yet' : isInWarranty && isOurs ? 'in warranty' : 'not covered',
    cost_cents: isOpen ? null : draw.whole(isOurs ? 350 : 0, isOurs ? 1900 : 120) * 100,
    causes:
      fate.cause === null || isOpen
        ? []
        : [{ cause: fate.cause, pack, certainty: draw.happens(0.75) ? 'known' : 'suspected' }],
  };
}
