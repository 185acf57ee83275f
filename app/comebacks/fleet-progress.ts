// How far a question about the fleet is, told while it runs.

/** Builds reckoned of those whose figures are missing; `isOver` when the question has its answer or was ended. */
export type FleetProgress = { readonly done: number; readonly of: number; readonly isOver: boolean };
