// The two ways a call travels: through the desktop window's preload, or over HTTP to the host that served this page.
import type { FleetProgress } from '../../app/comebacks/fleet-progress.ts';
import type { Reply } from '../../app/contract/reply.ts';
import type { LineNews } from '../../app/indicators/line-news.ts';
import { overHttp } from './over-http.ts';

export type Transport = {
  readonly call: (method: string, input: unknown) => Promise<Reply<unknown>>;
  readonly subscribe: Subscribe;
};

/**
 * Calls `listener` whenever something was written, by anybody, with what a gauge says, or with how far a question about
 * the fleet is. Gives back what ends it.
 */
type Subscribe = {
  (what: 'changed', listener: () => void): () => void;
  (what: 'gauge', listener: (news: LineNews) => void): () => void;
  (what: 'fleet', listener: (progress: FleetProgress) => void): () => void;
};

declare global {
  interface Window {
    /** Put there by the preload of the desktop window; absent in a browser. */
    readonly thoubook?: Transport;
  }
}

export const transport: Transport = window.thoubook ?? overHttp;
