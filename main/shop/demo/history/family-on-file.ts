// A family’s sheet as the file numbers it, so that planted words find their rows.
import type { Revision, SavedCheck } from '../../../../app/specs/specs.contract.ts';

export class FamilyOnFile {
  readonly familyId: number;
  readonly revisionId: number;
  readonly #checks: ReadonlyMap<string, SavedCheck>;
  readonly #packs: ReadonlyMap<string, Revision['packs'][number]>;
  readonly #lines: ReadonlyMap<string, number>;

  constructor(revision: Revision) {
    this.familyId = revision.familyId;
    this.revisionId = revision.revisionId;
    this.#checks = new Map(revision.checks.map((check) => [check.name, check]));
    this.#packs = new Map(revision.packs.map((pack) => [pack.name, pack]));
    this.#lines = new Map(
      revision.lists.flatMap((list) =>
        list.lines.map(({ words, lineId }) => [`${list.name}\n${words}`, lineId] as const),
      ),
    );
  }

  check(name: string): SavedCheck {
    return onFile(this.#checks.get(name), name);
  }

  packId(name: string): number {
    return onFile(this.#packs.get(name), name).packId;
  }

  slotIds(pack: string): number[] {
    return onFile(this.#packs.get(pack), pack).slots.map(({ slotId }) => slotId);
  }

  lineId(list: string, words: string): number {
    return onFile(this.#lines.get(`${list}\n${words}`), words);
  }
}

function onFile<T>(found: T | undefined, name: string): T {
  if (found === undefined) throw new Error(`no sheet on file has ${name}`);
  return found;
}
