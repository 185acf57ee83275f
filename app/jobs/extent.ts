// What of a family's stages and sheet a small job takes. null stands for the whole rebuild.

export type Extent = {
  readonly stageIds: readonly number[];
  readonly checkNames: readonly string[];
  readonly listNames: readonly string[];
} | null;

/** Every job comes in by the first stage and ends in the closed ones, whatever is named between. */
export function stagesWithin<S extends { readonly stageId: number; readonly isClosed: boolean }>(
  stages: readonly S[],
  extent: Extent,
): S[] {
  return stages.filter(
    (stage, index) => extent === null || index === 0 || stage.isClosed || extent.stageIds.includes(stage.stageId),
  );
}

export function checksWithin<C extends { readonly name: string }>(checks: readonly C[], extent: Extent): C[] {
  return checks.filter(({ name }) => extent === null || extent.checkNames.includes(name));
}

export function listsWithin<L extends { readonly name: string }>(lists: readonly L[], extent: Extent): L[] {
  return lists.filter(({ name }) => extent === null || extent.listNames.includes(name));
}

/** The packs that a check or a list within speaks of. */
export function packsWithin<P extends { readonly packId: number }>(
  packs: readonly P[],
  within: ReadonlyArray<{ readonly packId: number | null }>,
  extent: Extent,
): P[] {
  return packs.filter(({ packId }) => extent === null || within.some((each) => each.packId === packId));
}
