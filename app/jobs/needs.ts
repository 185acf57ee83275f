// What a stage may ask for before a job moves past it: a closed list, each of which the book can test today.
export const needs = [
  'complaint said',
  'as-found clearances read',
  'packs entered as found',
  'date promised',
  'estimate approved',
  'pack checks settled',
  'all checks settled',
  'signed off',
  'delivery recorded',
  'cores settled',
  'plates measured again',
  'teardown lists done',
  'findings decided',
  'build lists done',
  'final lists done',
] as const;

export type Need = (typeof needs)[number];
