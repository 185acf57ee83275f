// One open line: bytes in, news out, and the line opened again whenever it was lost.
import type { LineSettings } from '../../app/indicators/indicators.contract.ts';
import type { LineNews, LineStanding } from '../../app/indicators/line-news.ts';
import {
  freshReader,
  type LineReader,
  type LineWords,
  readBytes,
  type Sample,
} from '../../app/indicators/read-line.ts';
import { parsePattern } from '../../app/indicators/reading-pattern.ts';
import { requestBytes } from '../../app/indicators/request-bytes.ts';
import { frameOf, practiceLevel } from '../../app/indicators/simulated-plate.ts';
import { accepted } from '../database/errors.ts';
import { CannotOpen, type OpenedLine, openSerialLine } from '../ports/serial-line.ts';

/** Some seventeen times a second: an eye sees no more, and a hundred readings a second cost no more than ten. */
const newsEvery_ms = 60;
const tryAgainAfter_ms = 1000;
const silentAfter_ms = 3000;
/** So many in a row that are no reading are said; a single one is only counted. */
const garbledInARow = 3;

export class LiveLine {
  readonly lineId: number;
  readonly settings: LineSettings;
  readonly #tell: (news: LineNews) => void;
  readonly #words: LineWords;
  readonly #request: readonly number[];
  readonly #startedAt = performance.now();
  #reader: LineReader = freshReader;
  #samples: Sample[] = [];
  #garbledSinceReading = 0;
  #heardAt = 0;
  #readAt = 0;
  #standing: LineStanding = 'opening';
  #told: LineStanding | null = null;
  #line: OpenedLine | null = null;
  #timers: NodeJS.Timeout[] = [];
  #isLeft = false;

  constructor(lineId: number, settings: LineSettings, tell: (news: LineNews) => void) {
    this.lineId = lineId;
    this.settings = settings;
    this.#tell = tell;
    this.#words = { ...settings, pattern: accepted(parsePattern(settings.pattern), 'pattern') };
    this.#request = settings.source === 'serial' ? accepted(requestBytes(settings.request), 'request') : [];
  }

  get standing(): LineStanding {
    return this.#standing;
  }

  /** Tries to open it; lost or taken, it is tried again until it is left. */
  async open(): Promise<void> {
    try {
      const line = await this.#openSource();
      if (this.#isLeft) return await line.close();
      this.#line = line;
      this.#standing = 'open';
      this.#heardAt = this.#readAt = this.#now();
      this.#reader = { ...this.#reader, pending: freshReader.pending };
      this.#every(newsEvery_ms, () => this.#news());
      if (this.#request.length > 0) this.#every(this.settings.every_ms, () => line.send(this.#request));
    } catch (thrown) {
      if (!(thrown instanceof CannotOpen)) throw thrown;
      this.#lose(thrown.standing);
    }
  }

  async leave(): Promise<void> {
    this.#isLeft = true;
    this.#stopTimers();
    await this.#line?.close();
    this.#line = null;
    this.#standing = 'closed';
    this.#news();
  }

  #openSource(): Promise<OpenedLine> {
    const hear = (bytes: Iterable<number>) => this.#hear(bytes);
    const { settings } = this;
    if (settings.source === 'serial') return openSerialLine(settings, hear, () => this.#lose('away'));
    const speak = () => {
      const level = practiceLevel(this.#now(), settings.practice);
      hear(Buffer.from(`${frameOf(level, settings.step_nm)}\r\n`, 'latin1'));
    };
    const timer = setInterval(speak, settings.every_ms);
    return Promise.resolve({ send: () => undefined, close: async () => clearInterval(timer) });
  }

  #hear(bytes: Iterable<number>): void {
    const { garbled } = this.#reader;
    const { reader, samples } = readBytes(this.#reader, bytes, this.#now(), this.#words);
    this.#reader = reader;
    this.#samples.push(...samples);
    this.#heardAt = this.#now();
    if (samples.length > 0) this.#readAt = this.#heardAt;
    this.#garbledSinceReading = samples.length > 0 ? 0 : this.#garbledSinceReading + reader.garbled - garbled;
  }

  #news(): void {
    if (this.#line) {
      const now = this.#now();
      const isGarbled = this.#garbledSinceReading >= garbledInARow || now - this.#readAt > silentAfter_ms;
      this.#standing = now - this.#heardAt > silentAfter_ms ? 'silent' : isGarbled ? 'garbled' : 'open';
    }
    if (this.#samples.length === 0 && this.#standing === this.#told) return;
    const samples = this.#samples.map(({ at_ms, value_nm }) => [at_ms, value_nm] as const);
    const { readings, garbled, lastFrame } = this.#reader;
    this.#samples = [];
    this.#told = this.#standing;
    this.#tell({ lineId: this.lineId, standing: this.#standing, samples, readings, garbled, lastFrame });
  }

  #lose(standing: LineStanding): void {
    this.#stopTimers();
    this.#line = null;
    this.#standing = standing;
    this.#news();
    if (this.#isLeft) return;
    this.#timers.push(setTimeout(() => void this.open(), tryAgainAfter_ms));
  }

  #every(interval_ms: number, act: () => void): void {
    this.#timers.push(setInterval(act, interval_ms));
  }

  #stopTimers(): void {
    for (const timer of this.#timers) clearInterval(timer);
    this.#timers = [];
  }

  /** Whole milliseconds since it was made; never set back, as a clock on the wall may be. */
  #now(): number {
    return Math.round(performance.now() - this.#startedAt);
  }
}
