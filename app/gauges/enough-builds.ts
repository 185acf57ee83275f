// When a check has been read on enough builds for limits to be drawn from them.

/** Fewer builds than this say too little of what is usual. Common practice, no source. */
export const enoughBuilds = 8;

export function tooFewBuilds(builds: number): string | null {
  return builds < enoughBuilds ? `Not enough yet: ${builds} of ${enoughBuilds} builds have it as final.` : null;
}
