// The lines that are open now, each once however many windows hear it. Nothing here touches the shop file.
import type { LineSettings } from '../../app/indicators/indicators.contract.ts';
import type { LineNews, LineStanding } from '../../app/indicators/line-news.ts';
import { LiveLine } from './live-line.ts';

export class LiveLines {
  readonly #lines = new Map<number, LiveLine>();
  readonly #listeners = new Set<(news: LineNews) => void>();

  /** Opens a line unless it is open as it is set now, and answers how it stands. */
  async hear(lineId: number, settings: LineSettings): Promise<LineStanding> {
    const known = this.#lines.get(lineId);
    if (known && JSON.stringify(known.settings) === JSON.stringify(settings)) return known.standing;
    const line = new LiveLine(lineId, settings, (news) => this.#tell(news));
    // In its place before anything waits, so that two windows asking at once share it.
    this.#lines.set(lineId, line);
    await known?.leave();
    await line.open();
    return line.standing;
  }

  async leave(lineId: number): Promise<void> {
    const line = this.#lines.get(lineId);
    this.#lines.delete(lineId);
    await line?.leave();
  }

  async leaveAll(): Promise<void> {
    await Promise.all([...this.#lines.keys()].map((lineId) => this.leave(lineId)));
  }

  /** Calls `listener` with all news, until the answered function is called; when nobody listens any more, all close. */
  onNews(listener: (news: LineNews) => void): () => void {
    this.#listeners.add(listener);
    return () => {
      this.#listeners.delete(listener);
      if (this.#listeners.size === 0) void this.leaveAll();
    };
  }

  #tell(news: LineNews): void {
    for (const listener of this.#listeners) listener(news);
  }
}
