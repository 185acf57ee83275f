// Plates that are written down one by one: what lay in a pack, the one steel that was swapped, and the next unit that
// gets what came out.
import { dayAfter } from '../../../../app/jobs/calendar-days.ts';
import type { Draw } from './draw.ts';
import type { PackToBuild } from './families.ts';
import { type BuildTruth, plantedPack } from './plan-build.ts';
import type { PlantedMockUp, PlantedPlate, PlantedTake } from './planted-ticket.ts';
import { airTake } from './typed-takes.ts';
import { stepsOn } from './working-day.ts';

/** Of a hundred builds so many are written down plate by plate. */
const writtenDown = 0.1;
const mostLoose = 40;

export class LoosePlates {
  readonly #draw: Draw;
  /** By outline. */
  readonly #loose = new Map<string, PlantedPlate[]>();
  #tags = 0;

  constructor(draw: Draw) {
    this.#draw = draw;
  }

  /** Found with one steel, built with another, so that the pack comes to what it truly is; null for most builds. */
  mockUpsFor(truth: BuildTruth, key: number, opened: string, at: string) {
    const draw = this.#draw;
    const pack = truth.family.packs[plantedPack];
    const outline = pack?.pack.slots.find(({ kind }) => kind === 'steel')?.outline;
    if (!pack || outline === undefined || !draw.happens(writtenDown)) return null;
    const out = this.#newSteel(outline, 90 + draw.whole(-8, 8) / 2);
    const into = this.#steelFor(outline, thouOf(out));
    const others = Array.from({ length: pack.steels - 1 }, () => this.#newSteel(outline, 92 + draw.whole(-2, 4) / 2));
    const { hand } = truth;
    const asFound = stepsOn(dayAfter(opened, 1), 13);
    const found = { pack: pack.pack.name, number: 0, hand, at: asFound(), plates: laid(pack, out, others, key) };
    const built = { pack: pack.pack.name, number: 1, hand, at, plates: laid(pack, into, others, key) };
    this.#putLoose(outline, out);
    const clearance = (truth.clearances[plantedPack] ?? pack.aim) + thouOf(into) - thouOf(out);
    const asFoundTake = airTake(draw, pack, {
      clearance: Math.max(8, clearance),
      plates: truth.plates,
      isRepeated: false,
      hand,
      at: asFound(),
      phase: 'as found',
    });
    return {
      mockUps: [found, built] satisfies PlantedMockUp[],
      /** Its own reading as found in place of any other; the final one read the second mock-up. */
      readInto: (takes: readonly PlantedTake[]): PlantedTake[] => [
        asFoundTake,
        ...takes
          .filter(({ check, phase }) => check !== pack.clearance.name || phase !== 'as found')
          .map((take) => (take.check === pack.clearance.name ? { ...take, mockUp: 1 } : take)),
      ],
    };
  }

  #newSteel(outline: string, thou: number): PlantedPlate {
    this.#tags += 1;
    return measured('steel', outline, `H${this.#tags}`, thou);
  }

  /** A loose one that differs, where there is one; else a new one. */
  #steelFor(outline: string, beside: number): PlantedPlate {
    const loose = this.#loose.get(outline) ?? [];
    const index = loose.findIndex((plate) => thouOf(plate) !== beside);
    const [reused] = index === -1 || this.#draw.happens(0.4) ? [] : loose.splice(index, 1);
    return reused ?? this.#newSteel(outline, beside + this.#draw.oneOf([-5, -3.5, -2, 2, 3.5, 5]));
  }

  #putLoose(outline: string, plate: PlantedPlate): void {
    const loose = this.#loose.get(outline) ?? [];
    this.#loose.set(outline, [...loose, plate].slice(-mostLoose));
  }
}

function measured(kind: PlantedPlate['kind'], outline: string, tag: string, thou: number): PlantedPlate {
  return { key: tag, kind, outline, tag, typed: thou.toFixed(1), height_nm: Math.round(thou * 25_400) };
}

function thouOf({ height_nm }: PlantedPlate): number {
  return height_nm / 25_400;
}

/** Slot by slot; the thinnest steel to the second place, as the first family asks. */
function laid(
  { pack }: PackToBuild,
  swapped: PlantedPlate,
  others: readonly PlantedPlate[],
  key: number,
): PlantedPlate[] {
  const [thinnest, ...rest] = [swapped, ...others].toSorted((a, b) => a.height_nm - b.height_nm);
  const steels = thinnest ? [...rest.slice(0, 1), thinnest, ...rest.slice(1)] : rest;
  let place = 0;
  return pack.slots.flatMap((slot, index): PlantedPlate[] => {
    const steel = slot.kind === 'steel' ? steels[place++] : undefined;
    if (steel) return [steel];
    if (slot.nominal_nm === null) return [];
    const { kind, outline, nominal_nm } = slot;
    return [{ key: `${key}-${index}`, kind, outline, tag: '', typed: null, height_nm: nominal_nm }];
  });
}
