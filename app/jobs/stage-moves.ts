// From stage to stage: forward past what every stage on the way asks for, back at any time.
import type { Need } from './needs.ts';
import { type NeedFacts, whatIsMissing } from './unmet-needs.ts';

/** In the order of the shop. */
export type StageOnTheWay = { readonly stageId: number; readonly name: string; readonly needs: readonly Need[] };

export type MissingNeed = {
  readonly stageId: number;
  readonly stageName: string;
  readonly need: Need;
  /** "Forward clearance: not read as found". */
  readonly what: string;
};

/** The stages a move leaves behind: the present one and all before the one aimed at; none for a move back. */
export function stagesPassed<S extends StageOnTheWay>(stages: readonly S[], fromId: number, toId: number): S[] {
  const from = stages.findIndex((stage) => stage.stageId === fromId);
  const to = stages.findIndex((stage) => stage.stageId === toId);
  return stages.slice(from, Math.max(from, to));
}

/** Everything that stands in the way of a move, in the order of the stages; nothing for a move back. */
export function missingForMove(
  stages: readonly StageOnTheWay[],
  move: { readonly fromId: number; readonly toId: number },
  facts: NeedFacts,
): MissingNeed[] {
  return stagesPassed(stages, move.fromId, move.toId).flatMap((stage) => missingAt(stage, facts));
}

/** What one stage asks for and has not got. */
export function missingAt({ stageId, name, needs }: StageOnTheWay, facts: NeedFacts): MissingNeed[] {
  return needs.flatMap((need) => {
    const what = whatIsMissing(need, facts);
    return what === null ? [] : [{ stageId, stageName: name, need, what }];
  });
}

/** "Before Build: no day is promised; Forward, Direct: not entered plate by plate." */
export function sayMissing(stageName: string, missing: readonly MissingNeed[]): string {
  const all = [...new Set(missing.map(({ what }) => what))].join('; ');
  return `Before ${stageName}: ${all}.`;
}
