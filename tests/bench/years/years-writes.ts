// Every act of the contract that a hand does in a day's work, round after round through the host, each one timed.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type Sqlite from 'better-sqlite3';
import { type Contract, contract, type Input, type MethodName, type Output } from '../../../app/contract/contract.ts';
import { writeAtTheBench } from './writes-at-the-bench.ts';
import { writeInTheOffice } from './writes-in-the-office.ts';
import { writeOfTheGauges } from './writes-of-the-gauges.ts';
import { writeOfTheShelves } from './writes-of-the-shelves.ts';
import { answerOf, type YearsHost } from './years-host.ts';

export type WriteMethod = { [M in MethodName]: Contract[M]['kind'] extends 'write' ? M : never }[MethodName];

/** What is no act of a day's work, and why it is not held to the limit of one. */
const leftOut: Partial<Record<WriteMethod, string>> = {
  'shop.createShop': 'makes a file',
  'shop.openDemoShop': 'makes a file',
  'shop.openOwnShop': 'opens a file',
  'backups.makeBackup': 'copies the file in a worker',
  'backups.chooseSecondPlace': 'copies the file in a worker',
  'backups.makeWholeBackup': 'copies the file and its photos in a worker',
  'backups.restore': 'puts another file in place',
  'backups.salvage': 'reads a damaged file',
  'stock.importCsv': 'takes in a list of any length',
  'updates.nameFeed': 'asks an address elsewhere',
  'updates.look': 'asks an address elsewhere',
  'updates.fetchVersion': 'asks an address elsewhere',
};

export type Round = {
  readonly call: <M extends MethodName>(method: M, input: Input<M>) => Promise<Output<M>>;
  /** From 1; what must be named once carries it. */
  readonly turn: number;
  readonly by: number;
  readonly familyId: number;
  readonly sheet: Output<'specs.getRevision'>;
  readonly today: string;
  readonly folder: string;
  /** The first number a query answers. */
  readonly one: (query: string, ...given: number[]) => number;
  /** A picture that no other round has. */
  readonly jpegBase64: string;
};

/** Milliseconds of each call, by method; the first round only warms up. */
export async function timeWrites(
  host: Pick<YearsHost, 'call' | 'timed'>,
  file: Sqlite.Database,
  folder: string,
  rounds: number,
): Promise<Map<WriteMethod, number[]>> {
  const took = new Map<WriteMethod, number[]>();
  const drawn = readFileSync(join(import.meta.dirname, '../../../main/shop/demo/pictures/pump-face.jpg'));
  writeFileSync(join(folder, 'IMG_0001.jpg'), drawn);
  const families = await host.call('specs.listFamilies', {});
  const familyId = families.find(({ name }) => name === 'KX3')?.familyId ?? 0;
  const sheet = await host.call('specs.getRevision', { familyId });
  for (let turn = 1; turn <= rounds + 1; turn += 1) {
    const picture = Buffer.from(drawn);
    picture.writeUInt8(turn, picture.length - 200);
    const round: Round = {
      turn,
      by: 1,
      familyId,
      sheet,
      folder,
      today: new Date().toISOString().slice(0, 10),
      jpegBase64: picture.toString('base64'),
      one: (query, ...given) =>
        Number(
          file
            .prepare(query)
            .pluck()
            .get(...given),
        ),
      call: async (method, input) => {
        const timed = await host.timed(method, input);
        if (turn > 1 && isWrite(method)) took.set(method, [...(took.get(method) ?? []), timed.took]);
        return answerOf(method, input, timed.reply);
      },
    };
    const ticket = await writeAtTheBench(round);
    await writeOfTheShelves(round, ticket.jobId);
    await writeOfTheGauges(round);
    await writeInTheOffice(round, ticket);
  }
  const missing = (Object.keys(contract) as MethodName[]).filter(
    (method) => isWrite(method) && !took.has(method) && leftOut[method] === undefined,
  );
  if (missing.length > 0) throw new Error(`no round calls ${missing.join(', ')}`);
  return took;
}

function isWrite(method: MethodName): method is WriteMethod {
  return contract[method].kind === 'write';
}
