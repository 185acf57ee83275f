// What is wrong with the lists of a spec sheet before it is saved, one plain sentence.
import type { ListLine, SpecList } from './spec-list.ts';

/** What is wrong with a list beside the packs of its sheet, in one sentence that names it. */
export function listProblem(list: SpecList, packs: ReadonlyArray<{ readonly name: string }>): string | undefined {
  if (list.packName !== null && !packs.some((pack) => pack.name === list.packName)) {
    return `${list.name} belongs to a pack called ${list.packName}, which is not on the sheet.`;
  }
  const twice = repeated(list.lines.map(({ words }) => words));
  if (twice !== undefined) return `${list.name} asks twice for ${twice}: word one of the lines differently.`;
  const problem = list.lines.map(lineProblem).find(Boolean);
  return problem && `${list.name}, ${problem}`;
}

/** What is wrong with a line by itself, in one sentence that begins with its words. */
export function lineProblem({ words, asks }: ListLine): string | undefined {
  if (asks.kind === 'stall' && asks.lowRpm >= asks.highRpm) {
    return `${words}: the low limit ${asks.lowRpm} rpm is not below the high limit ${asks.highRpm} rpm.`;
  }
  if (asks.kind === 'choice') {
    const twice = repeated(asks.options.map((option) => option.words));
    if (twice !== undefined) return `${words}: ${twice} stands among the choices twice.`;
    if (!asks.options.some(({ isGood }) => isGood)) return `${words}: none of the choices is good.`;
  }
  return undefined;
}

function repeated(words: readonly string[]): string | undefined {
  return words.find((each, index) => words.indexOf(each) < index);
}
