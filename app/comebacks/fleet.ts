// One question about a fleet, answered: who is followed, how long they last, how many came back, and what goes with it.
import type { Result } from '../base/result.ts';
import type { CurveTold, FactorTold, FleetAnswer, FleetSelection } from './fleet.contract.ts';
import { enoughEvents, type Factor, tryFactors } from './fleet-factors.ts';
import type { FactorColumn, FleetBuild, FleetRows } from './fleet-rows.ts';
import { findShadows, type HeldAgainst, type Shadow } from './fleet-shadows.ts';
import { type Curve, compareGroups, curveOf, ratesByQuarter, roundTimes, wearLine } from './fleet-survival.ts';
import { factorName, factorSentence, settleSentence, shadowSentence } from './fleet-words.ts';
import { endings, type FollowedBuild, followBuilds, reasonsLeftOut } from './follow-builds.ts';
import type { ShopWords } from './say-amount.ts';

/**
 * What the delivered builds of a family say together. `rows` holds all of them; the selection takes some. Whatever has
 * too few comebacks behind it is refused with how many it has and how many it needs.
 */
export function askFleet(selection: FleetSelection, rows: FleetRows): FleetAnswer {
  const { builds, columns, today, words } = rows;
  const places = [...builds.keys()].filter((place) => isSelected(builds[place]!, selection));
  const asked = { ...selection, isUseGuessed: selection.guessUse };
  const { followed, leftOut, fromDelivery, usePerDay } = followBuilds(builds, places, today, asked);
  const events = followed.reduce((sum, { event }) => sum + event, 0);
  const times = roundTimes(followed.at(-1)?.time ?? 1, selection.clock === 'days');
  const groups = columns.filter((column) => column.kind === 'group');
  const groupBy = groups.find(({ name }) => name === selection.groupBy);
  return {
    today,
    selected: places.length,
    followed: followed.length,
    events,
    leftOut: reasonsLeftOut.flatMap((why) => (leftOut[why] === 0 ? [] : [{ why, builds: leftOut[why] }])),
    fromDelivery,
    usePerDay,
    guessed: followed.filter(({ isGuessed }) => isGuessed).length,
    endings: endings.flatMap((ending) => {
      const some = followed.filter((each) => each.ending === ending).length;
      return some === 0 ? [] : [{ ending, builds: some }];
    }),
    survival: ifEnough(events, () => ({ isEnough: true, curve: curveTold(curveOf(followed, times)) })),
    wear: ifEnough(events, () => wearTold(followed)),
    quarters: ratesByQuarter(builds, followed),
    groups: groups.map(({ name }) => name),
    compared: groupBy
      ? ifEnough(events, () => {
          const compared = compareGroups(groupBy, followed, times);
          if (!compared.ok) return notEnough(compared);
          const curves = compared.value.curves.map((each) => ({ ...each, curve: curveTold(each.curve) }));
          return { isEnough: true, ...compared.value, curves };
        })
      : null,
    factors: ifEnough(events, () => {
      const { tried, count, notTried } = tryFactors(columnsAsked(columns, selection), followed);
      const found = tried.filter(({ isFound }) => isFound);
      return {
        isEnough: true,
        count,
        tried: tried.slice(0, Math.max(mostTold, found.length)).map((each) => factorTold(each, words)),
        notTried: [...notTried],
        shadows: findShadows(found, followed).map((each) => shadowTold(each, words)),
      };
    }),
  };
}

/** Finds are told whatever their number; of what was tried in vain the likeliest. */
const mostTold = 100;

type NotEnough = { isEnough: false; why: string };

function ifEnough<T>(events: number, tell: () => T | NotEnough): T | NotEnough {
  if (events >= enoughEvents) return tell();
  return { isEnough: false, why: `Not enough yet: ${events} of ${enoughEvents} comebacks needed.` };
}

function notEnough({ refusal }: Extract<Result<unknown>, { ok: false }>): NotEnough {
  return { isEnough: false, why: refusal.message };
}

function isSelected(build: FleetBuild, selection: FleetSelection): boolean {
  const { revision, builderId, batchId, deliveredFrom, deliveredUntil } = selection;
  return (
    (revision === null || build.revisionNumber === revision) &&
    (builderId === null || build.builderId === builderId) &&
    (batchId === null || build.batchIds.includes(batchId)) &&
    (deliveredFrom === null || build.deliveredOn >= deliveredFrom) &&
    (deliveredUntil === null || build.deliveredOn <= deliveredUntil)
  );
}

/** How one pack was read says nothing of another. */
function columnsAsked(columns: readonly FactorColumn[], { packName }: FleetSelection): FactorColumn[] {
  const isOfReading = (column: FactorColumn) =>
    column.kind === 'group' && (column.grouping === 'method' || column.grouping === 'plates');
  return columns.filter((column) => packName === null || !isOfReading(column) || column.packName === packName);
}

function wearTold(followed: readonly FollowedBuild[]): FleetAnswer['wear'] {
  const fit = wearLine(followed);
  if (!fit.ok) return notEnough(fit);
  const { shape, shapeInterval, scale, scaleInterval, b10 } = fit.value;
  return {
    isEnough: true,
    shape,
    shapeInterval: [...shapeInterval],
    scale,
    scaleInterval: [...scaleInterval],
    b10,
  };
}

function curveTold({ steps, atTimes, ...curve }: Curve): CurveTold {
  return {
    ...curve,
    steps: steps.map(({ time, atRisk, events, survival, lower, upper, cumulativeHazard }) => ({
      time,
      atRisk,
      events,
      survival,
      lower,
      upper,
      cumulativeHazard,
    })),
    atTimes: [...atTimes],
  };
}

function factorTold(factor: Factor, words: ShopWords): FactorTold {
  const { column, level, builds, events, unrecorded, inLevel, between, effect, adjusted, isFound } = factor;
  return {
    name: column.name,
    level,
    unit: column.kind === 'number' ? column.unit : null,
    builds,
    events,
    unrecorded,
    inLevel,
    between,
    by: effect.by,
    ratio: effect.ratio,
    interval: [...effect.interval],
    p: effect.p,
    adjusted,
    isFound,
    says: factorSentence(factor, words),
    settle: settleSentence(factor),
  };
}

function shadowTold(shadow: Shadow, words: ShopWords) {
  const [first, second] = shadow.each;
  return {
    correlation: shadow.correlation,
    builds: shadow.builds,
    each: [heldTold(first), heldTold(second)] as [ReturnType<typeof heldTold>, ReturnType<typeof heldTold>],
    says: shadowSentence(shadow, words),
  };
}

function heldTold({ factor, within, inside, ratio, interval, mayBeShadow }: HeldAgainst) {
  return {
    factor: factorName(factor),
    within: factorName(within),
    inside: [...inside],
    ratio,
    interval: interval && ([...interval] as [number, number]),
    mayBeShadow,
  };
}
