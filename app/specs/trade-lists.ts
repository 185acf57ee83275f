// A set of lists to start a family from, as the trade commonly goes through a unit; nothing in it has a source.
import type { ListLine, ListTime, SpecList } from './spec-list.ts';
import type { Pack, PieceKind, Slot } from './spec-sheet.ts';

export const commonPractice = 'common practice, no source';

export const tick = (words: string): ListLine => ({ words, asks: { kind: 'tick' } });
export const count = (words: string, expected: number): ListLine => ({ words, asks: { kind: 'count', expected } });
export const say = (words: string): ListLine => ({ words, asks: { kind: 'words' } });
export const changed = (words: string): ListLine => ({ words, asks: { kind: 'change' } });
/** One of several; those under `off` are not good. */
export const choice = (words: string, good: readonly string[], off: readonly string[]): ListLine => ({
  words,
  asks: {
    kind: 'choice',
    options: [
      ...good.map((each) => ({ words: each, isGood: true })),
      ...off.map((each) => ({ words: each, isGood: false })),
    ],
  },
});

type OfPack = Pick<Pack, 'name'> & { readonly slots: ReadonlyArray<Pick<Slot, 'kind' | 'facing'>> };

/** Teardown, each pack before its snap ring goes in, valve body, converter and cooler, final, break-in. */
export function tradeLists(packs: readonly OfPack[]): SpecList[] {
  const list = (name: string, when: ListTime, lines: ListLine[], packName: string | null = null): SpecList => ({
    name,
    when,
    packName,
    lines,
    sourceNote: commonPractice,
  });
  return [
    list('Teardown', 'teardown', [
      say('What lay in the pan and on the magnet'),
      choice('Pump faces', ['smooth'], ['scored']),
      choice('Drums and sealing-ring lands', ['smooth'], ['scored', 'cracked']),
      choice('Bushings', ['tight'], ['worn']),
      choice('Thrust washers and bearings', ['smooth'], ['worn']),
      choice('Shafts and splines', ['sound'], ['worn', 'twisted']),
      tick('Case looked over for cracks and worn bores'),
    ]),
    ...packs.map((pack) =>
      list(`${pack.name.trim()} before the snap ring`, 'build', beforeTheRing(pack), pack.name.trim()),
    ),
    list('Valve body', 'build', [
      say('Separator plate'),
      tick('Check balls all in their places'),
      tick('Every valve moves freely by its own weight'),
      changed('Hole drilled'),
      changed('Spring changed'),
      say('Options set'),
    ]),
    list('Converter', 'build', [
      choice('Source', ['new', 'rebuilt'], ['as it came out']),
      tick('Hub smooth, no step where the seal runs'),
      tick('Filled before it went in'),
    ]),
    list('Cooler', 'final', [choice('Cooler and lines', ['flushed', 'replaced'], ['left as they were'])]),
    list('Final', 'final', [
      say('Fluid'),
      say('Fluid put in'),
      choice('Upshifts', ['firm and on time'], ['soft', 'late', 'flares']),
      choice('Downshifts and kickdown', ['right'], ['late', 'bangs']),
      choice('Reverse', ['right'], ['slow', 'slips']),
      choice('Leaks when hot', ['none'], ['seeps', 'drips']),
      tick('Codes read and cleared'),
    ]),
    list('Break-in', 'final', [tick('Driven warm and cold through every gear'), tick('Level set hot')]),
  ];
}

const counted: ReadonlyArray<readonly [PieceKind, string]> = [
  ['friction', 'Frictions'],
  ['steel', 'Steels'],
  ['wave plate', 'Wave plates'],
  ['apply plate', 'Apply plates'],
];

/** Counts by kind, how each plate lies as its slot says, and the ring. */
export function beforeTheRing({ slots }: OfPack): ListLine[] {
  const ofKind = (kind: PieceKind) => slots.filter((slot) => slot.kind === kind);
  const facings = new Set(
    slots.filter(({ facing }) => facing.trim() !== '').map(({ kind, facing }) => `${capital(kind)}: ${facing.trim()}`),
  );
  return [
    ...counted.flatMap(([kind, words]) => (ofKind(kind).length === 0 ? [] : [count(words, ofKind(kind).length)])),
    ...[...facings].map(tick),
    ...(ofKind('backing plate').length === 0 ? [] : [tick('Backing plate at the ring end')]),
    tick('Ring seated all round'),
  ];
}

function capital(kind: string): string {
  return kind.charAt(0).toUpperCase() + kind.slice(1);
}
