// A shop's feed as electron-builder would write it, with one version for this machine in it.
import { createHash } from 'node:crypto';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { onTestFinished } from 'vitest';

export type Feed = {
  readonly port: number;
  /** What it hands out is not what it lists until this is set. */
  isWhole: boolean;
};

/** Offers `program` as this version under /thoubook/, with these notes. */
export async function startFeed(version: string, notes: string, program: string): Promise<Feed> {
  const name = `Thoubook-${version}.AppImage`;
  const server = createServer(({ url = '' }, response) => {
    const path = url.split('?')[0];
    const sha512 = createHash('sha512').update(program).digest('base64');
    const list = { version, files: [{ url: name, sha512, size: program.length }], releaseNotes: notes };
    // What is JSON is YAML too.
    if (path === '/thoubook/latest-linux.yml') return response.end(JSON.stringify(list));
    if (path === `/thoubook/${name}`) return response.end(feed.isWhole ? program : `${program}#`);
    response.writeHead(404).end();
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  onTestFinished(() => void server.close());
  const feed = { port: (server.address() as AddressInfo).port, isWhole: false };
  return feed;
}
