// The families whose builds the history holds: KX3 and two more, all invented, their sheets too.
import { packOfCheck, whatACheckTells } from '../../../../app/comebacks/what-a-check-tells.ts';
import type { SpecList } from '../../../../app/specs/spec-list.ts';
import type { Check, Pack, SpecSheet } from '../../../../app/specs/spec-sheet.ts';
import { choice, count, say, tick } from '../../../../app/specs/trade-lists.ts';
import { backingPlate, kx3Sheet, lengthCheck, psi, quarts, range, stack, target } from '../kx3-sheet.ts';

/** A pack as the history builds it; lengths in thou. */
export type PackToBuild = {
  readonly pack: Pack;
  readonly clearance: Check;
  readonly aim: number;
  readonly lowest: number;
  readonly highest: number;
  /** Where its circuit is blown through, and the letter of the port. */
  readonly circuit: Check;
  readonly port: string;
  readonly frictions: number;
  readonly steels: number;
};

export type FamilyToBuild = {
  readonly name: string;
  readonly sheet: SpecSheet;
  /** Of a hundred builds, where all families are built. */
  readonly share: number;
  readonly packs: readonly PackToBuild[];
};

type PackWords = { name: string; plates: number; friction: number; aim: number; either: number; spots: number };

/** A sheet of the shop's usual checks and lists over these packs. */
function usualSheet(family: string, packs: readonly PackWords[]): SpecSheet {
  const sourceNote = `invented sheet ${family}`;
  const single = (check: Parameters<typeof lengthCheck>[0]) => lengthCheck({ ...check, sourceNote });
  const pressure = (name: string, low: number, high: number) =>
    single({
      name,
      group: 'Line pressure',
      method: 'direct',
      quantity: 'pressure',
      unit: 'psi',
      limits: { kind: 'range', low: psi(low), high: psi(high) },
    });
  return {
    packs: packs.map(({ name, plates, friction }) => ({
      name,
      slots: [...stack(plates, `${family} ${name.toLowerCase()}`, friction), backingPlate(240)],
      rules: [],
      note: '',
      clutch: null,
    })),
    checks: [
      ...packs.map(({ name, aim, either, spots }) =>
        single({
          name: `${name} clearance`,
          group: 'Clearance',
          method: 'air',
          packName: name,
          limits: target(aim, aim - either, aim + either),
          holdsFor: 'mean and tightest',
          spots,
        }),
      ),
      single({ name: 'Front end play', group: 'End play', method: 'dial', limits: target(18, 10, 24) }),
      single({
        name: 'Converter hub to pump bushing',
        group: 'Bushings, rings',
        method: 'direct',
        limits: range(2, 4.5),
      }),
      single({ name: 'Sealing ring side', group: 'Bushings, rings', method: 'direct', limits: range(1.5, 4) }),
      ...packs.map(({ name }, index) =>
        single({
          name: `Port ${index + 1}, ${name}`,
          group: 'Leak-down, 40 psi, 10 s',
          method: 'drop',
          quantity: 'pressure',
          unit: 'psi',
          limits: { kind: 'maximum', high: psi(10) },
        }),
      ),
      pressure('Line, idle, D', 70, 95),
      pressure('Line, full throttle, D', 145, 180),
      single({
        name: 'Cooler flow in 30 s',
        group: 'Cooler',
        method: 'direct',
        quantity: 'volume',
        unit: 'qt',
        limits: { kind: 'minimum', low: quarts(1) },
      }),
    ],
    lists: usualLists(packs, sourceNote),
    pictures: [],
  };
}

function usualLists(packs: readonly PackWords[], sourceNote: string): SpecList[] {
  const about = { packName: null, sourceNote };
  return [
    ...packs.map(
      ({ name, plates }): SpecList => ({
        name: `${name} before the snap ring`,
        when: 'build',
        packName: name,
        lines: [count('Frictions', plates), count('Steels', plates), tick('Ring seated all round')],
        sourceNote,
      }),
    ),
    { ...about, name: 'Converter', when: 'build', lines: [choice('Source', ['new', 'rebuilt'], ['as it came out'])] },
    {
      ...about,
      name: 'Cooler',
      when: 'final',
      lines: [choice('Cooler and lines', ['flushed', 'replaced'], ['left as they were'])],
    },
    {
      ...about,
      name: 'Final',
      when: 'final',
      lines: [say('Fluid'), choice('Leaks when hot', ['none'], ['seeps', 'drips'])],
    },
  ];
}

function familyToBuild(name: string, share: number, sheet: SpecSheet): FamilyToBuild {
  const packs = sheet.packs.flatMap((pack): PackToBuild[] => {
    const clearance = sheet.checks.find(({ packName }) => packName === pack.name);
    const circuit = sheet.checks.find(
      (check) => whatACheckTells(check) === 'leak-down' && packOfCheck(check, sheet.packs)?.name === pack.name,
    );
    if (!clearance || !circuit || clearance.limits.kind !== 'target') return [];
    const { low, target: aim, high } = clearance.limits;
    const ofKind = (kind: string) => pack.slots.filter((slot) => slot.kind === kind).length;
    return [
      {
        pack,
        clearance,
        aim: aim / 25_400,
        lowest: low / 25_400,
        highest: high / 25_400,
        circuit,
        port: /^Port (\w+)/.exec(circuit.name)?.[1] ?? '',
        frictions: ofKind('friction'),
        steels: ofKind('steel'),
      },
    ];
  });
  return { name, share, sheet, packs };
}

export const kx3Name = 'KX3';

/** The first one's second pack is where most of what is planted sits. */
export const familiesToBuild: readonly FamilyToBuild[] = [
  familyToBuild(kx3Name, 76, kx3Sheet),
  familyToBuild(
    'WQ7',
    14,
    usualSheet('WQ7', [
      { name: 'First', plates: 4, friction: 78, aim: 30, either: 5, spots: 4 },
      { name: 'Second', plates: 5, friction: 78, aim: 40, either: 5, spots: 4 },
      { name: 'Reverse', plates: 4, friction: 84, aim: 60, either: 12, spots: 1 },
    ]),
  ),
  familyToBuild(
    'QN2',
    10,
    usualSheet('QN2', [
      { name: 'Low', plates: 6, friction: 72, aim: 50, either: 8, spots: 4 },
      { name: 'High', plates: 5, friction: 72, aim: 35, either: 5, spots: 4 },
    ]),
  ),
];
