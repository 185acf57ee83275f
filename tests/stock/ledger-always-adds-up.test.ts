import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { promisify } from 'node:util';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shopWithParts } from './shop-with-parts.ts';

const run = promisify(execFile);
const root = join(import.meta.dirname, '..', '..');

/** One act, with numbers that may ask for too much. */
const act = fc.record({
  kind: fc.constantFrom('receive', 'pull', 'return', 'scrap', 'count', 'take apart'),
  which: fc.nat(9),
  quantity: fc.integer({ min: 1, max: 9 }),
});

test('over any history what is on hand is what a plain recount says, and never below zero', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(act, { minLength: 5, maxLength: 25 }), async (acts) => {
      const { call, desk, frictionId, sealId, kitId, jobId, by, receive } = await shopWithParts();
      // The plain recount: what each batch holds, and what the job has of it.
      const shelf = new Map<number, number>();
      const held = new Map<number, number>();
      const kits = new Set<number>();
      for (const { kind, which, quantity } of acts) {
        const batches = [...shelf.keys()];
        const batchId = batches[which % Math.max(1, batches.length)];
        const onShelf = shelf.get(batchId ?? 0) ?? 0;
        const onJob = held.get(batchId ?? 0) ?? 0;
        const isKit = kits.has(batchId ?? 0);
        const attempt = async (mayGo: boolean, name: Parameters<typeof call>[0], input: object) => {
          const went = await call(name, { ...input, by }).then(
            () => true,
            () => false,
          );
          expect(went, `${kind} ${quantity} of batch ${batchId} with ${onShelf} on the shelf and ${onJob} out`).toBe(
            mayGo,
          );
          return went;
        };
        if (kind === 'receive' || batchId === undefined) {
          const partId = [frictionId, sealId, kitId][which % 3] ?? kitId;
          const received = await receive(partId, quantity, `B-${batches.length}`);
          shelf.set(received, quantity);
          if (partId === kitId) kits.add(received);
        } else if (kind === 'pull') {
          const { partId } = await partOf(call, batchId, [frictionId, sealId, kitId]);
          if (await attempt(quantity <= onShelf, 'stock.pullForJob', { jobId, partId, batchId, quantity })) {
            shelf.set(batchId, onShelf - quantity);
            held.set(batchId, onJob + quantity);
          }
        } else if (kind === 'return') {
          if (await attempt(quantity <= onJob, 'stock.returnFromJob', { jobId, batchId, partId: null, quantity })) {
            shelf.set(batchId, onShelf + quantity);
            held.set(batchId, onJob - quantity);
          }
        } else if (kind === 'scrap') {
          if (await attempt(quantity <= onShelf, 'stock.scrapFromBatch', { batchId, quantity, reason: 'wet' })) {
            shelf.set(batchId, onShelf - quantity);
          }
        } else if (kind === 'count') {
          await attempt(true, 'stock.countBatch', { batchId, counted: quantity, reason: 'counted' });
          shelf.set(batchId, quantity);
        } else if (await attempt(isKit && quantity <= onShelf, 'stock.openKit', { batchId, quantity })) {
          shelf.set(batchId, onShelf - quantity);
        }
      }
      for (const [batchId, quantity] of shelf) {
        const { batches } = await partOf(call, batchId, [frictionId, sealId, kitId]);
        const ours = batches.find((batch) => batch.batchId === batchId);
        // What a kit brought is laid into batches of its own, so no other batch changes.
        expect(ours?.onHand).toBe(quantity);
      }
      const onJob = await call('stock.listPartsOfJob', { jobId });
      expect(Object.fromEntries(onJob.map((each) => [each.batchId, each.quantity]))).toEqual(
        Object.fromEntries([...held].filter(([, quantity]) => quantity > 0)),
      );
      await desk.close();
    }),
    { numRuns: 12 },
  );
});

async function partOf(
  call: Awaited<ReturnType<typeof shopWithParts>>['call'],
  batchId: number,
  partIds: readonly number[],
) {
  for (const partId of partIds) {
    const part = await call('stock.getPart', { partId });
    if (part.batches.some((batch) => batch.batchId === batchId)) return part;
  }
  throw new Error(`no part has batch ${batchId}`);
}

test('two windows pulling the last piece: one has it, the other is told in one sentence', async () => {
  const { call, desk, frictionId, receive, jobId, by } = await shopWithParts();
  const batchId = await receive(frictionId, 1, 'B-7');
  const file = desk.shop().file;
  const pull = JSON.stringify({ jobId, partId: frictionId, batchId, quantity: 1, by });
  const window = () =>
    run(process.execPath, [
      join(root, 'main/shells/headless/ask.ts'),
      '--shop',
      file,
      '--write',
      'stock.pullForJob',
      pull,
    ]).then(
      ({ stdout }) => stdout,
      (failed: { stdout: string }) => failed.stdout,
    );
  const replies = (await Promise.all([window(), window()])).toSorted();
  expect(replies.filter((reply) => reply.includes('"pulled"'))).toHaveLength(1);
  expect(replies.filter((reply) => reply.includes('KX3-FR-080: none is left of batch B-7.'))).toHaveLength(1);
  expect((await call('stock.getPart', { partId: frictionId })).onHand).toBe(0);
});
