// `npm run --silent ask`: call one method of the contract on a shop file and print its reply as JSON.
import { existsSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { z } from 'zod';
import { contract, type MethodName } from '../../../app/contract/contract.ts';
import type { Failure } from '../../../app/contract/reply.ts';
import { storageErrorOf } from '../../database/errors.ts';
import { openShop } from '../../database/open-shop.ts';
import { systemClock } from '../../ports/clock.ts';
import { dispatch } from '../../rpc/dispatch.ts';
import { Desk } from '../../shop/desk.ts';

const usage = `npm run --silent ask -- --list
npm run --silent ask -- --shop FILE room.verbNoun '{"its":"input"}'
npm run --silent ask -- --shop FILE --write room.verbNoun '{"its":"input"}'`;

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    shop: { type: 'string' },
    write: { type: 'boolean', default: false },
    list: { type: 'boolean', default: false },
  },
});

if (values.list) {
  for (const [name, method] of Object.entries(contract)) {
    const { $schema: _, ...input } = z.toJSONSchema(method.input, { io: 'input' });
    console.log(`${name}\t${method.kind}\t${method.says}\n\t${JSON.stringify(input)}`);
  }
} else {
  await ask(values.shop, positionals[0], positionals[1] ?? '{}');
}

async function ask(file: string | undefined, name: string | undefined, input: string): Promise<void> {
  if (file === undefined || name === undefined) return refuse({ kind: 'refusal', code: 'usage', message: usage });
  if (!existsSync(file)) return refuse({ kind: 'refusal', code: 'no-file', message: `There is no file ${file}.` });
  const kind = Object.hasOwn(contract, name) ? contract[name as MethodName].kind : 'read';
  if (kind === 'write' && !values.write) {
    return refuse({
      kind: 'refusal',
      code: 'needs-write',
      message: `${name} writes: say --write if that is what you want.`,
    });
  }
  let parsed: unknown;
  try {
    parsed = JSON.parse(input);
  } catch {
    return refuse({ kind: 'refusal', code: 'input', message: 'The input is not JSON.' });
  }
  try {
    const shop = await openShop(resolve(file), kind, systemClock);
    const reply = await dispatch(Desk.over(shop, dirname(resolve(file))), name as MethodName, parsed);
    await shop.close();
    if (!reply.ok) return refuse(reply.error);
    console.log(JSON.stringify(reply.value, null, 2));
  } catch (thrown) {
    const storage = storageErrorOf(thrown);
    if (!storage) throw thrown;
    refuse({ kind: 'storage', code: storage.code, message: storage.message });
  }
}

function refuse(error: Failure): void {
  console.log(JSON.stringify({ refusal: error }, null, 2));
  process.exitCode = 2;
}
