// What a builder wants to tell apart when a unit comes back, and how sure he is of it.

/**
 * The causes of a comeback, in the order they are asked. Kept as words: a further one takes no migration.
 * Source: common practice, no source.
 */
export const causes = [
  'too tight',
  'too loose',
  'leak in one circuit',
  'low line pressure',
  'tie-up or valve body',
  'converter',
  'cooler or fluid',
  'stack-up error',
  'material',
  'use or setting',
] as const;

export const certainties = ['known', 'suspected', 'not found'] as const;

/** What a comeback turned out to be; only ours counts as one. */
export const outcomes = ['not known yet', 'ours', 'not our part', 'no fault found', 'logged by mistake'] as const;

export const coverings = ['not decided yet', 'in warranty', 'out of goodwill', 'not covered'] as const;

export type Cause = (typeof causes)[number];
export type Certainty = (typeof certainties)[number];
export type Outcome = (typeof outcomes)[number];
export type Covering = (typeof coverings)[number];
