// What is true in a planted shop: how often things are so, and by how much each makes a unit come back sooner. Every
// figure is invented; the app has to find them again from the book alone.

/** Lengths in thou, pressures in psi, flow in quarts in 30 s, times in days. */
export const plantedTruth = {
  /** Builds by each hand, of a hundred. */
  shareOfHands: [36, 30, 34],
  /** The first pack's clearance scatters about its aim by this part of the half band, as built by air. */
  scatterOfHalfBand: 0.4,
  /** One in so many is let go tight, by somebody's word, and by how much it then scatters below the limit. */
  letGoTight: { probability: 0.08, scatter: 3 },
  /** One hand reads the second pack by feeler, and leaves it too tight because his leaves read high. */
  feeler: { hand: 2, probability: 0.7, readsHigh: 7, scatter: 0.6 },
  /** Sealing rings of the second pack that leak down more, still under the limit. */
  leakDown: { usual: 3.5, scatter: 0.8, leaking: 8.3, leakingScatter: 0.6, probability: 0.07 },
  coolerFlow: { usual: 1.38, scatter: 0.1, low: 1.06, lowScatter: 0.03, probability: 0.07 },
  /** This hand's builds leak and flow low more often: his shadow falls on both. */
  confoundedHand: { hand: 1, leaking: 0.2, lowFlow: 0.18 },
  /** The batch of frictions of the second pack of the first family that is in use when this part of its builds is done. */
  badBatchAt: 0.4,
  /** Nothing comes of these. */
  decoys: { dryPlates: 0.3, secondFluid: 0.5, openedFeed: 0.4 },
  hazards: {
    /** Wear of a pack: Weibull; each thou below the limit divides its scale by e^perThou. */
    wear: { scale: 8000, shape: 1.6, perThou: 0.6 },
    /** Bad frictions, and any others. */
    material: { scale: 450, shape: 1.3, otherScale: 60_000 },
    /** At the usual leak-down; each psi above it divides the scale by e^perPsi. */
    leak: { scale: 90_000, shape: 1, perPsi: 0.9 },
    /** At the usual flow; each tenth of a quart below it divides the scale by e^perTenth. */
    cooling: { scale: 40_000, shape: 1, perTenth: 1.1 },
    /** What nothing recorded has to do with. */
    other: { scale: 16_000, shape: 1 },
    notOurs: { scale: 20_000, shape: 1 },
  },
  /** Moved away or sold: whatever happens to it, it is never heard of again. */
  neverHeardOf: 0.05,
  /** Comes back for something else, a reseal, after so many days. */
  laterJob: { scale: 5000, shape: 1 },
  warrantyMonths: { street: 24, tow: 12 },
  milesADay: [15, 60],
} as const;

export type PlantedTruth = typeof plantedTruth;

/** The same shop with everything that was planted taken out: nothing recorded has to do with what comes back. */
export type Effects = 'planted' | 'none';
