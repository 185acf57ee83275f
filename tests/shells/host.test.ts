// The loopback host: who gets in, who does not, and what crosses.
import { mkdirSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { startHost } from '../../main/shells/headless/host.ts';
import { shopWithKx3, temporaryFolder } from '../desk.ts';

type Answer = { status: number; headers: Record<string, string | string[] | undefined>; body: string };

function ask(
  url: URL,
  options: { method?: string; headers?: Record<string, string>; body?: string } = {},
): Promise<Answer> {
  return new Promise((answered, failed) => {
    const asking = request(url, { method: options.method ?? 'GET', headers: options.headers ?? {} }, (response) => {
      let body = '';
      response.setEncoding('utf8');
      response.on('data', (part) => {
        body += part;
      });
      response.on('end', () => answered({ status: response.statusCode ?? 0, headers: response.headers, body }));
    });
    asking.on('error', failed);
    asking.end(options.body);
  });
}

async function hostWithShop() {
  const at = await shopWithKx3();
  const renderer = temporaryFolder();
  mkdirSync(join(renderer, 'assets'));
  writeFileSync(join(renderer, 'index.html'), '<!doctype html><title>book</title>');
  writeFileSync(join(renderer, '../outside.html'), 'secret');
  const host = await startHost(at.desk, renderer);
  onTestFinished(() => host.close());
  const address = new URL(host.address);
  const enter = async () => {
    const { headers } = await ask(address);
    return String(headers['set-cookie']).split(';')[0] ?? '';
  };
  return { ...at, address, enter, to: (path: string) => new URL(path, address.origin) };
}

const json = { 'content-type': 'application/json' };

describe('only the one who was given the address gets in', () => {
  test('the printed address opens once, gives an HttpOnly cookie for this site alone, and is then spent', async () => {
    const { address } = await hostWithShop();
    const first = await ask(address);
    expect(first.status).toBe(303);
    expect(String(first.headers['set-cookie'])).toMatch(/HttpOnly; SameSite=Strict/);
    expect((await ask(address)).status).toBe(403);
  });

  test('without the cookie nothing is served and nothing is called', async () => {
    const { to, address } = await hostWithShop();
    expect((await ask(to('/'))).status).toBe(403);
    expect((await ask(to('/rpc/jobs.listStages'), { method: 'POST', headers: json, body: '{}' })).status).toBe(403);
    expect((await ask(to('/'), { headers: { cookie: `thoubook-${address.port}=${'0'.repeat(64)}` } })).status).toBe(
      403,
    );
  });

  test('another name for this machine, another origin and a form post are turned away', async () => {
    const { to, enter } = await hostWithShop();
    const cookie = await enter();
    const call = { method: 'POST', body: '{}' };
    const path = to('/rpc/jobs.listStages');
    expect((await ask(path, { ...call, headers: { ...json, cookie, host: 'evil.example' } })).status).toBe(403);
    expect((await ask(path, { ...call, headers: { ...json, cookie, origin: 'http://evil.example' } })).status).toBe(
      403,
    );
    expect((await ask(path, { ...call, headers: { 'content-type': 'text/plain', cookie } })).status).toBe(415);
    expect((await ask(path, { ...call, headers: { ...json, cookie } })).status).toBe(200);
  });

  test('files come from the renderer’s folder only, under the strict policy', async () => {
    const { to, enter } = await hostWithShop();
    const cookie = await enter();
    const page = await ask(to('/'), { headers: { cookie } });
    expect(page.body).toContain('book');
    expect(page.headers['content-security-policy']).toContain("default-src 'none'");
    expect((await ask(to('/..%2foutside.html'), { headers: { cookie } })).status).toBe(404);
    expect((await ask(to('/%2e%2e/outside.html'), { headers: { cookie } })).status).toBe(404);
    expect((await ask(to('/%'), { headers: { cookie } })).status).toBe(404);
  });
});

test('two books on one machine do not take each other’s cookie', async () => {
  const [first, second] = [await hostWithShop(), await hostWithShop()];
  const cookies = [await first.enter(), await second.enter()].join('; ');
  expect((await ask(first.to('/'), { headers: { cookie: cookies } })).status).toBe(200);
  expect((await ask(second.to('/'), { headers: { cookie: cookies } })).status).toBe(200);
});

describe('a call crosses as it would in the desktop window', () => {
  test('a value, a refusal, and what is not JSON', async () => {
    const { to, enter } = await hostWithShop();
    const headers = { ...json, cookie: await enter() };
    const call = async (method: string, body: string) =>
      JSON.parse((await ask(to(`/rpc/${method}`), { method: 'POST', headers, body })).body);
    expect(await call('specs.listFamilies', '{}')).toMatchObject({ ok: true, value: [{ name: 'KX3' }] });
    expect(await call('jobs.getJob', '{"jobId":9}')).toMatchObject({
      ok: false,
      error: { kind: 'refusal', code: 'not-found' },
    });
    expect(await call('jobs.getJob', '{')).toMatchObject({ ok: false, error: { kind: 'refusal', code: 'input' } });
  });

  test('a second window hears of what the first one wrote', async () => {
    const { to, enter, call } = await hostWithShop();
    const cookie = await enter();
    const heard = new Promise<string>((hear, failed) => {
      const listening = request(to('/events'), { headers: { cookie } }, (response) => {
        response.setEncoding('utf8');
        response.on('data', (text: string) => {
          if (text.includes('event: changed')) hear(text);
          else void call('shop.addPerson', { name: 'Ben Tolland', initials: 'BT' });
        });
      });
      listening.on('error', failed);
      listening.end();
      onTestFinished(() => {
        listening.destroy();
      });
    });
    expect(await heard).toContain('event: changed');
  });

  test('what a gauge says reaches the window, until the line is left', async () => {
    const { to, enter, call, desk } = await hostWithShop();
    const cookie = await enter();
    const { lineId } = await call('indicators.addLine', {
      source: 'practice',
      name: 'Practice',
      practice: 'steady',
      pattern: '{number}',
      unit: 'mm',
      isReversed: false,
      step_nm: 1000,
      stillWithin_steps: 5,
      stillFor_ms: 500,
      every_ms: 20,
    });
    let listening: ReturnType<typeof request> | undefined;
    const told = new Promise<string>((hear, failed) => {
      listening = request(to('/events'), { headers: { cookie } }, (response) => {
        response.setEncoding('utf8');
        response.on('data', (text: string) => {
          if (text.includes('event: gauge')) hear(text);
          else void call('indicators.hearLine', { lineId });
        });
      });
      listening.on('error', failed);
      listening.end();
    });
    const news = JSON.parse(/^data: (.*)$/m.exec(await told)?.[1] ?? '');
    expect(news).toMatchObject({ lineId, standing: 'open', garbled: 0 });
    expect(news.samples[0]).toEqual([expect.any(Number), 0]);
    const closed = new Promise((hear) => desk.lines.onNews(({ standing }) => standing === 'closed' && hear(standing)));
    listening?.destroy();
    await call('indicators.leaveLine', { lineId });
    expect(await closed).toBe('closed');
  });
});
