// Calls over HTTP to the host that served this page, and one stream of what it tells.
import type { FleetProgress } from '../../app/comebacks/fleet-progress.ts';
import type { Reply } from '../../app/contract/reply.ts';
import type { LineNews } from '../../app/indicators/line-news.ts';
import { ShutOut } from './failures.ts';
import { stand } from './standing.ts';

const forbidden = 403;
/** A window that was shut out knocks so often: another window may have let the browser in. */
const knockEvery_ms = 3000;

export const overHttp = {
  async call(method: string, input: unknown): Promise<Reply<unknown>> {
    const response = await fetch(`/rpc/${method}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(input),
    });
    if (response.status === forbidden) {
      stand('shut out');
      throw new ShutOut();
    }
    const reply: unknown = await response.json();
    if (typeof reply !== 'object' || reply === null || !('ok' in reply)) {
      throw new Error(`HTTP status ${response.status} without a reply`);
    }
    return reply as Reply<unknown>;
  },

  subscribe(what: 'changed' | 'gauge' | 'fleet', listener: (news: never) => void) {
    const listeners: Record<typeof what, Set<(news: never) => void>> = { changed, gauge, fleet };
    return hear(listeners[what], listener);
  },
};

const changed = new Set<() => void>();
const gauge = new Set<(news: LineNews) => void>();
const fleet = new Set<(progress: FleetProgress) => void>();

/** One stream for everything that is told: a browser opens only a few to one host. */
let events: EventSource | null = null;

function hear<Listener>(listeners: Set<Listener>, listener: Listener): () => void {
  listeners.add(listener);
  if (events === null) open();
  return () => {
    listeners.delete(listener);
    if (changed.size + gauge.size + fleet.size > 0) return;
    events?.close();
    events = null;
  };
}

function open(): void {
  const stream = new EventSource('/events');
  const isAnew = events !== null;
  events = stream;
  let wasLost = isAnew;
  stream.addEventListener('open', () => {
    stand('let in');
    // What was written while the line was down was not announced.
    if (wasLost) tellChange();
    wasLost = false;
  });
  stream.addEventListener('error', () => {
    wasLost = true;
    // A browser tries again by itself while nobody answers, and gives up on whoever will not have it.
    const isShutOut = stream.readyState === EventSource.CLOSED;
    stand(isShutOut ? 'shut out' : 'away');
    if (isShutOut) setTimeout(() => events === stream && open(), knockEvery_ms);
  });
  stream.addEventListener('changed', tellChange);
  stream.addEventListener('gauge', ({ data }: MessageEvent<string>) => {
    const news: LineNews = JSON.parse(data);
    for (const listener of gauge) listener(news);
  });
  stream.addEventListener('fleet', ({ data }: MessageEvent<string>) => {
    const progress: FleetProgress = JSON.parse(data);
    for (const listener of fleet) listener(progress);
  });
}

function tellChange(): void {
  for (const listener of changed) listener();
}
