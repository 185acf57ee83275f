// The commands of a shell: a walk through the whole job, and any question to a shop file.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';

const headless = join(import.meta.dirname, '../../main/shells/headless');

function run(script: string, ...given: string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(headless, script), ...given], {
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
}

const ask = (...given: string[]) => {
  const { status, stdout } = run('ask.ts', ...given);
  return { status, reply: JSON.parse(stdout) };
};

describe('a walk without a window', () => {
  const folder = join(mkdtempSync(join(tmpdir(), 'thoubook-')), 'walk');
  const file = join(folder, 'shop.thoubook');
  let walk: ReturnType<typeof run>;
  beforeAll(() => {
    walk = run('walk.ts', '--out', folder);
  });

  test('says what was read, planned and decided, with the example’s figures', () => {
    expect(walk.stderr).toBe('');
    expect(walk.status).toBe(0);
    for (const line of [
      /^Forward, 1 change: 76\.5 out, 83\.0 \(A47\) into steel 2, should read 25\.5/m,
      /^Forward: predicted 25\.5, read 26\.0, 25\.0 to 27\.0, in\.$/m,
      /^Direct: predicted 45\.0, read 45\.0, 44\.0 to 47\.0, in\.$/m,
      /^Low\/reverse: ring 86 in, predicted 60\.0, read 60\.0, in\.$/m,
      /^Front end play: Washer 66\.0 in, end play 31\.0: fit 78\.0, it should read 19\.0\.$/m,
      /^Nothing is missing\.$/m,
    ]) {
      expect(walk.stdout).toMatch(line);
    }
  });

  test('leaves the shop file and both copies of the report, and will not write over them', () => {
    expect(readdirSync(folder).filter((name) => name.endsWith('.pdf'))).toHaveLength(2);
    for (const name of readdirSync(folder).filter((each) => each.endsWith('.pdf'))) {
      expect(readFileSync(join(folder, name)).subarray(0, 5).toString()).toBe('%PDF-');
    }
    const again = run('walk.ts', '--out', folder);
    expect([again.status, again.stderr]).toEqual([2, expect.stringContaining('already')]);
  });

  test('any method of the contract can be asked of the file it left', () => {
    expect(ask('--shop', file, 'jobs.listJobs', '{"text":"Okoro","includeClosed":false}')).toMatchObject({
      status: 0,
      reply: [{ number: 1, customerName: 'Tam Okoro' }],
    });
  });

  test('reading leaves the file as it was; writing needs to be said', () => {
    const before = readFileSync(file);
    ask('--shop', file, 'shop.getShop', '{}');
    const write = ['specs.addFamily', '{"name":"KX8","by":1}'];
    expect(ask('--shop', file, ...write)).toMatchObject({ status: 2, reply: { refusal: { code: 'needs-write' } } });
    expect(readFileSync(file)).toEqual(before);
    expect(ask('--shop', file, '--write', ...write)).toMatchObject({ status: 0, reply: { familyId: 2 } });
  });

  test('a refusal exits 2 with its sentence', () => {
    expect(ask('--shop', file, 'jobs.getJob', '{"jobId":99}')).toEqual({
      status: 2,
      reply: { refusal: { kind: 'refusal', code: 'not-found', message: 'There is no such job.' } },
    });
    expect(ask('--shop', file, 'jobs.getJob', '{')).toMatchObject({ status: 2, reply: { refusal: { code: 'input' } } });
    expect(ask('--shop', `${file}.none`, 'jobs.getJob', '{}')).toMatchObject({
      status: 2,
      reply: { refusal: { code: 'no-file' } },
    });
    expect(existsSync(`${file}.none`)).toBe(false);
    expect(ask('--shop', join(headless, 'ask.ts'), 'jobs.listStages')).toMatchObject({
      status: 2,
      reply: { refusal: { code: 'foreign' } },
    });
  });
});

test('the list names every method with its kind and its input', () => {
  const { status, stdout } = run('ask.ts', '--list');
  expect(status).toBe(0);
  expect(stdout).toMatch(/^readings\.recordReading\twrite\t/m);
  expect(stdout).toMatch(/^jobs\.getJob\tread\tthe whole ticket\n\t\{"type":"object","properties":\{"jobId"/m);
});
