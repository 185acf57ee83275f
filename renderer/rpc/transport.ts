// The two ways a call travels: through the desktop window's preload, or over HTTP to the host that served this page.
import type { Reply } from '../../app/contract/reply.ts';

export type Transport = {
  readonly call: (method: string, input: unknown) => Promise<Reply<unknown>>;
  /** Calls `listener` whenever something was written, by anybody. Gives back what ends it. */
  readonly subscribe: (listener: () => void) => () => void;
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

  subscribe(listener) {
    const events = new EventSource('/events');
    let wasOpen = false;
    events.addEventListener('changed', listener);
    // What was written while the line was down was not announced.
    events.addEventListener('open', () => {
      if (wasOpen) listener();
      wasOpen = true;
    });
    return () => events.close();
  },
};

export const transport: Transport = window.thoubook ?? overHttp;
