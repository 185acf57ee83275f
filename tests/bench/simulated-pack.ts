// A bench with known truth: plates that are not what the micrometer says, a pack that never stacks twice the same.
import type { Draw } from './seeded.ts';

/** Everything in tenths of a thou. The spreads are invented; a shop learns its own. */
export const truth = {
  plates: 6,
  target: 350,
  thinnest: 740,
  thickest: 830,
  /** One standard deviation of how far a pack is off before anybody touches it. */
  offBefore: 80,
  micrometerPerPlate: 3,
  micrometerShared: 2,
  /** How differently a pack stacks when it is built again. */
  restack: 10,
  /** A hand at one spot, and how finely the dial is read. */
  handPerSpot: 7,
  dialResolution: 5,
  spots: 4,
  /** The drum is never even: amplitude around the circle. */
  mostUneven: 15,
};

export type Setting = { readonly halfBand: number; readonly loose: number };

export type Plate = { readonly id: string; readonly miked: number; readonly true: number };

export type SimulatedPack = {
  readonly fitted: readonly Plate[];
  readonly loose: readonly Plate[];
  readonly gap: number;
  /** Builds it from these plates: what the clearance then truly is, and what four spots read on average. */
  readonly build: (plates: readonly Plate[]) => { readonly clearance: number; readonly reading: number };
};

export function simulatedPack(draw: Draw, { loose }: Setting): SimulatedPack {
  const shared = draw.normal(0, truth.micrometerShared);
  const plate = (id: string): Plate => {
    const miked = draw.whole(truth.thinnest, truth.thickest);
    return { id, miked, true: miked - shared - draw.normal(0, truth.micrometerPerPlate) };
  };
  const fitted = Array.from({ length: truth.plates }, (_, place) => plate(`in ${place}`));
  const bin = Array.from({ length: loose }, (_, place) => plate(`loose ${place}`));
  const sum = (plates: readonly Plate[]) => plates.reduce((total, each) => total + each.true, 0);
  const gap = sum(fitted) + truth.target + draw.normal(0, truth.offBefore);
  const amplitude = draw.whole(0, truth.mostUneven);
  const loosestAt = draw.whole(0, 359);
  return {
    fitted,
    loose: bin,
    gap,
    build: (plates) => {
      const clearance = gap - sum(plates) + draw.normal(0, truth.restack);
      let readings = 0;
      for (let spot = 0; spot < truth.spots; spot++) {
        const degrees = (360 / truth.spots) * spot - loosestAt;
        const here = clearance + amplitude * Math.cos((degrees * Math.PI) / 180) + draw.normal(0, truth.handPerSpot);
        readings += Math.round(here / truth.dialResolution) * truth.dialResolution;
      }
      return { clearance, reading: readings / truth.spots };
    },
  };
}

/** The standard uncertainty of the mean of the spots, as the book would state it. */
export const readingUncertainty =
  Math.hypot(truth.handPerSpot, truth.dialResolution / Math.sqrt(12)) / Math.sqrt(truth.spots);
