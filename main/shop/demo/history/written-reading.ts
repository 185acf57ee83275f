// What a planted line means and what its take leans on, by the same functions the bench uses.
import { lineField } from '../../../../app/readings/line-field.ts';
import { figuresNow, type TakeFigures } from '../../../../app/readings/take-figures.ts';
import { parseLine, type TypedReading } from '../../../../app/readings/typed-line.ts';
import type { Settings } from '../../../../app/shop/shop.contract.ts';
import type { Check } from '../../../../app/specs/spec-sheet.ts';
import type { PlantedTake } from './planted-ticket.ts';

/** Remembers what it has read: a history types the same few lines over and over. */
export class LineReader {
  readonly #settings: Settings;
  readonly #known = new Map<string, TypedReading>();

  constructor(settings: Settings) {
    this.#settings = settings;
  }

  /** Throws on a line the bench would ask about: a history holds none. */
  read(check: Pick<Check, 'quantity' | 'unit'>, { method, setup }: PlantedTake, typed: string): TypedReading {
    const key = `${method} ${check.quantity} ${check.unit} ${typed}`;
    const known = this.#known.get(key);
    if (known) return known;
    const field = lineField(check, method, setup, this.#settings);
    const parsed = parseLine(typed, { ...field, isZeroedAgain: false, meaning: null });
    if (!parsed.ok) throw new Error(`${typed}: ${parsed.refusal.message}`);
    this.#known.set(key, parsed.value);
    return parsed.value;
  }
}

/** The shop’s starting figures: an old card says nothing of how well the hand repeated then. */
export function figuresOf(check: Pick<Check, 'quantity'>, take: PlantedTake, settings: Settings): TakeFigures {
  const learned = { repeats: { sumOfSquares: 0, degreesOfFreedom: 0 }, feelerAboveAir: null };
  const figures = figuresNow(check, take.method, settings, learned);
  // Nobody here ever read a pack both ways.
  return take.method === 'feeler' ? { ...figures, feeler: { pairs: 0, bias: null } } : figures;
}
