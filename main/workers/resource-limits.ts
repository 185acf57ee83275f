// What every worker may hold, and for how long.

/**
 * V8 lets the young half of a worker's heap grow to 48 MB before it looks what is garbage, and keeps what it grew to: four
 * workers would hold more than the book itself. Collected oftener, a paper takes a fifth longer and a third of the memory.
 */
export const resourceLimits = { maxYoungGenerationSizeMb: 8 } as const;

/** Papers and questions come in bunches; between them a worker that is kept would hold a hundred megabytes. */
export const idleUntil_ms = 60_000;
