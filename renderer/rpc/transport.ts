// The two ways a call travels: through the desktop window's preload, or over HTTP to the host that served this page.
import type { Reply } from '../../app/contract/reply.ts';
import type { LineNews } from '../../app/indicators/line-news.ts';

export type Transport = {
  readonly call: (method: string, input: unknown) => Promise<Reply<unknown>>;
  readonly subscribe: Subscribe;
};

/** Calls `listener` whenever something was written, by anybody, or with what a gauge says. Gives back what ends it. */
type Subscribe = {
  (what: 'changed', listener: () => void): () => void;
  (what: 'gauge', listener: (news: LineNews) => void): () => void;
};

declare global {
  interface Window {
    /** Put there by the preload of the desktop window; absent in a browser. */
    readonly thoubook?: Transport;
  }
}

const overHttp: Transport = {
  async call(method, input) {
    const response = await fetch(`/rpc/${method}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(input),
    });
    const reply: unknown = await response.json();
    if (typeof reply !== 'object' || reply === null || !('ok' in reply)) {
      throw new Error(`HTTP status ${response.status} without a reply`);
    }
    return reply as Reply<unknown>;
  },

  subscribe(what: 'changed' | 'gauge', listener: (news: LineNews) => void) {
    return what === 'changed' ? hearChanges(listener as () => void) : hearGauges(listener);
  },
};

/** One stream for everything that is told: a browser opens only a few to one host. */
let stream: { readonly events: EventSource; uses: number } | null = null;

function onStream(attach: (events: EventSource) => () => void): () => void {
  stream ??= { events: new EventSource('/events'), uses: 0 };
  const { events } = stream;
  stream.uses += 1;
  const detach = attach(events);
  return () => {
    detach();
    if (stream === null) return;
    stream.uses -= 1;
    if (stream.uses > 0) return;
    events.close();
    stream = null;
  };
}

function hearChanges(listener: () => void): () => void {
  return onStream((events) => {
    let wasOpen = events.readyState === EventSource.OPEN;
    // What was written while the line was down was not announced.
    const opened = () => {
      if (wasOpen) listener();
      wasOpen = true;
    };
    events.addEventListener('changed', listener);
    events.addEventListener('open', opened);
    return () => {
      events.removeEventListener('changed', listener);
      events.removeEventListener('open', opened);
    };
  });
}

function hearGauges(listener: (news: LineNews) => void): () => void {
  return onStream((events) => {
    const hear = ({ data }: MessageEvent<string>) => listener(JSON.parse(data));
    events.addEventListener('gauge', hear);
    return () => events.removeEventListener('gauge', hear);
  });
}

export const transport: Transport = window.thoubook ?? overHttp;
