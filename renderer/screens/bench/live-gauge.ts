// A gauge's running trace at one spot: every piece of news is followed, and what can be accepted now is at hand.
import { useCallback, useEffect, useRef, useState } from 'react';
import { followPlate, nothingSeen, type PlateRules, type PlateSeen } from '../../../app/indicators/follow-plate.ts';
import type { GaugeLine, HeardTrace } from '../../../app/indicators/indicators.contract.ts';
import { thinTrace } from '../../../app/indicators/kept-trace.ts';
import { type LineNews, standingSentence } from '../../../app/indicators/line-news.ts';
import { type OfferState, offerOf, type Wanted } from '../../../app/indicators/plate-offer.ts';
import type { Sample } from '../../../app/indicators/read-line.ts';
import type { Settings } from '../../../app/shop/shop.contract.ts';
import { useGaugeLine } from '../../rpc/use-gauge-line.ts';
import type { ShopWords } from '../../text/amount-words.ts';
import { liveSentence } from './live-words.ts';

/** Of the running trace so much is kept in hand. */
const kept_ms = 90_000;
/** A kept trace begins so long before the hand pressed, or before it was accepted where nothing was pressed. */
const before_ms = 1000;
const withoutPush_ms = 15_000;

export type LiveNow = {
  readonly samples: readonly Sample[];
  readonly seen: PlateSeen;
  readonly state: OfferState;
  /** What the hand does next. */
  readonly sentence: string;
  /** Why there is nothing to accept from the line as it stands; null while readings come. */
  readonly trouble: string | null;
};

const atFirst: PlateSeen = nothingSeen;

/** Follows the line from the beginning of a spot; another `spotKey` begins anew. */
export function useLiveGauge(
  line: GaugeLine,
  settings: Settings,
  wanted: Wanted,
  words: ShopWords,
  spotKey: string,
): LiveNow {
  const rules: PlateRules = {
    within_nm: line.step_nm * line.stillWithin_steps,
    for_ms: line.stillFor_ms,
    zeroReturn_nm: settings.zeroReturnLimit_nm,
  };
  const now = useRef({ samples: [] as Sample[], seen: atFirst, news: null as LineNews | null });
  const latestRules = useRef(rules);
  latestRules.current = rules;
  const [, draw] = useState(0);
  const hear = useCallback((news: LineNews) => {
    const held = now.current;
    // A line that was away may have missed anything: what was seen before says nothing about what is seen now.
    if (news.standing !== 'open') held.seen = atFirst;
    for (const [at_ms, value_nm] of news.samples) {
      held.samples.push({ at_ms, value_nm });
      held.seen = followPlate(held.seen, { at_ms, value_nm }, latestRules.current);
    }
    const last = held.samples.at(-1)?.at_ms ?? 0;
    const old = held.samples.findIndex(({ at_ms }) => at_ms >= last - kept_ms);
    if (old > 0) held.samples.splice(0, old);
    held.news = news;
    draw((times) => times + 1);
  }, []);
  const error = useGaugeLine(line.lineId, hear);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new spot is what begins anew.
  useEffect(() => {
    now.current.seen = atFirst;
    draw((times) => times + 1);
  }, [spotKey]);
  const { samples, seen, news } = now.current;
  const state = offerOf(seen, wanted, rules);
  return {
    samples,
    seen,
    state,
    sentence: liveSentence(seen, state, wanted, words),
    trouble: error?.message ?? (news ? standingSentence(news) : 'The gauge’s line is being opened.'),
  };
}

/** The trace to keep with a reading accepted now: from just before the push, its times from nothing, thinned. */
export function heardOf({ samples, seen }: LiveNow, lineId: number): HeardTrace | null {
  const last = samples.at(-1);
  if (!last) return null;
  const from = Math.min(seen.restAt_ms ?? last.at_ms, last.at_ms - withoutPush_ms * Number(seen.pressed_nm === null));
  const heard = samples.filter(({ at_ms }) => at_ms >= from - before_ms);
  const start = heard[0]?.at_ms ?? 0;
  if (heard.length < 2) return null;
  return {
    lineId,
    samples: thinTrace(heard).map(({ at_ms, value_nm }) => [at_ms - start, value_nm]),
    heard: heard.length,
    rest_nm: seen.rest_nm,
    pressed_nm: seen.pressed_nm,
    air_nm: seen.air_nm,
  };
}
