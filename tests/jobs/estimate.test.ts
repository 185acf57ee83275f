// The estimate through the contract, on a real file: lines, what was given, what was approved, what was paid ahead.
import Sqlite from 'better-sqlite3';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shopWithParts } from '../stock/shop-with-parts.ts';

type Shop = Awaited<ReturnType<typeof shopWithParts>>;

const labour = {
  kind: 'labour',
  description: 'Rebuild',
  quantity: '18.5',
  unitPrice: '',
  unitCost: '',
  isTaxable: false,
  batchId: null,
};
const washer = { ...labour, kind: 'part', description: 'Thrust washer', quantity: '2', unitPrice: '9.50' };

async function shopWithTerms() {
  const shop = await shopWithParts();
  const { call, by } = shop;
  const terms = { labourRate: '115', taxLabel: 'Sales tax', taxRate: '8.875', isLabourTaxable: false, by };
  await call('jobs.setMoneyTerms', terms);
  const read = () => call('jobs.getEstimate', { jobId: shop.jobId });
  const add = async (line: object) => (await call('jobs.addLine', { jobId: shop.jobId, line, by })).lineId;
  const give = (whatWasFound = '') => call('jobs.giveEstimate', { jobId: shop.jobId, whatWasFound, by });
  const approve = (estimateId: number, more: object = {}) => {
    const said = { approvedBy: 'Tam Okoro', how: 'phone', upTo: '', approvedOn: null, note: '', by };
    return call('jobs.approveEstimate', { estimateId, ...said, ...more });
  };
  return { ...shop, terms, read, add, give, approve };
}

function linesInFile({ desk }: Pick<Shop, 'desk'>): unknown[] {
  const connection = new Sqlite(desk.shop().file, { readonly: true });
  const rows = connection.prepare('select * from job_lines order by job_line_id').all();
  connection.close();
  return rows;
}

describe('lines', () => {
  test('labour takes the shop’s rate, parts come from the ticket at their price with their cost kept apart', async () => {
    const { call, jobId, by, frictionId, receive, read, add } = await shopWithTerms();
    await receive(frictionId, 12, 'FB-1');
    await call('stock.pullForJob', { jobId, partId: frictionId, batchId: null, quantity: 9, by });
    const [offer] = (await read()).offers;
    expect(offer).toMatchObject({ quantity: 9, unitPrice_cents: 750, unitCost_cents: 410, kind: 'part' });
    await add(labour);
    await call('jobs.addLinesFromStock', { jobId, batchIds: [offer?.batchId], by });
    const estimate = await read();
    // 18.5 × 115.00 = 2,127.50; 9 × 7.50 = 67.50; 67.50 × 8.875 % = 5.990625, so 5.99: all by hand.
    expect(estimate.lines.map((line) => line.amount_cents)).toEqual([212_750, 6_750]);
    expect(estimate.totals).toEqual({
      lines_cents: 219_500,
      taxable_cents: 6_750,
      tax_cents: 599,
      total_cents: 220_099,
    });
    expect(estimate.offers).toEqual([]);
    await call('stock.returnFromJob', { jobId, batchId: offer?.batchId, partId: null, quantity: 2, by });
    expect((await read()).lines[1]?.stock?.pulled).toBe(7);
  });

  test('a credit is for cores and others only', async () => {
    const { refusal, jobId, by, add, read } = await shopWithTerms();
    await add({ ...washer, kind: 'core charge', description: 'Converter core back', quantity: '1', unitPrice: '-50' });
    expect((await read()).totals.total_cents).toBe(-5_000);
    const line = { ...washer, unitPrice: '-1' };
    expect(await refusal('jobs.addLine', { jobId, line, by })).toMatchObject({
      code: 'no-credit',
      field: 'unitPrice',
    });
  });

  test('a part without a price is not guessed, and none is charged for twice', async () => {
    const { call, refusal, jobId, by, sealId, receive, read } = await shopWithTerms();
    const batchId = await receive(sealId, 3, 'S-1');
    await call('stock.pullForJob', { jobId, partId: sealId, batchId: null, quantity: 1, by });
    expect((await read()).offers[0]?.unitPrice_cents).toBeNull();
    const fromStock = { jobId, batchIds: [batchId], by };
    expect(await refusal('jobs.addLinesFromStock', fromStock)).toMatchObject({ code: 'unpriced' });
    await call('jobs.addLine', { jobId, line: { ...washer, quantity: '1', batchId }, by });
    expect(await refusal('jobs.addLinesFromStock', fromStock)).toMatchObject({ code: 'nothing-to-charge' });
  });

  test.each([
    ['a zero quantity', { quantity: '0' }, 'quantity'],
    ['a third decimal of money', { unitPrice: '9.505' }, 'unitPrice'],
    ['no price on a part', { unitPrice: '' }, 'unitPrice'],
    ['a cost that is not money', { unitCost: 'cheap' }, 'unitCost'],
    ['more than the book keeps', { quantity: '10000', unitPrice: '100,000,000' }, 'unitPrice'],
    ['a batch that is not on the ticket', { batchId: 1 }, 'batchId'],
  ])('%s is refused in place, and nothing is written', async (_, wrong, field) => {
    const shop = await shopWithTerms();
    await shop.receive(shop.frictionId, 1, 'FB-1');
    const failure = await shop.refusal('jobs.addLine', { jobId: shop.jobId, line: { ...washer, ...wrong }, by: 1 });
    expect(failure).toMatchObject({ kind: 'refusal', field, message: expect.stringMatching(/^[^\n]+\.$/) });
    expect(linesInFile(shop)).toEqual([]);
  });

  test('labour without a rate asks for one', async () => {
    const { refusal, jobId, by } = await shopWithParts();
    expect(await refusal('jobs.addLine', { jobId, line: labour, by })).toMatchObject({ code: 'no-rate' });
  });
});

describe('nothing is edited', () => {
  test('a replaced line stays with its reason; once it was given, a reason is asked for', async () => {
    const { call, refusal, by, add, give, read } = await shopWithTerms();
    const first = await add(washer);
    const { lineId } = await call('jobs.replaceLine', {
      lineId: first,
      line: { ...washer, quantity: '1' },
      reason: '',
      by,
    });
    await give();
    expect(await refusal('jobs.takeLineOff', { lineId, reason: '', by })).toMatchObject({ field: 'reason' });
    await call('jobs.takeLineOff', { lineId, reason: 'washer is good', by });
    expect(await refusal('jobs.takeLineOff', { lineId, reason: 'again', by })).toMatchObject({ code: 'line-ended' });
    const { lines, endedLines } = await read();
    expect(lines).toEqual([]);
    expect(endedLines.map((line) => [line.lineId, line.replacedById, line.reason])).toEqual([
      [first, lineId, ''],
      [lineId, null, 'washer is good'],
    ]);
  });

  test('whatever is added, replaced and taken off, every line ever written is still there as it was', async () => {
    const act = fc.record({ what: fc.constantFrom('add', 'replace', 'take off'), which: fc.nat(5), cents: fc.nat(9) });
    await fc.assert(
      fc.asyncProperty(fc.array(act, { minLength: 1, maxLength: 12 }), async (acts) => {
        const shop = await shopWithTerms();
        const { call, by, add, read } = shop;
        let known: unknown[] = [];
        for (const { what, which, cents } of acts) {
          const { lines } = await read();
          const lineId = lines[which % Math.max(1, lines.length)]?.lineId;
          const line = { ...washer, unitPrice: `1.0${cents}` };
          if (what === 'add' || lineId === undefined) await add(line);
          else if (what === 'replace') await call('jobs.replaceLine', { lineId, line, reason: 'changed', by });
          else await call('jobs.takeLineOff', { lineId, reason: 'not needed', by });
          const now = linesInFile(shop);
          expect(now.slice(0, known.length)).toEqual(known);
          known = now;
        }
        const { lines, endedLines } = await read();
        expect(lines.length + endedLines.length).toBe(known.length);
      }),
      { numRuns: 8 },
    );
  });
});

describe('what was given and approved', () => {
  test('from nothing to approved, over it, and approved anew', async () => {
    const { call, by, add, give, approve, read } = await shopWithTerms();
    expect((await read()).state).toBe('nothing to give');
    await add(labour);
    const partLine = await add({ ...washer, isTaxable: true });
    expect((await read()).state).toBe('to give');
    const { estimateId } = await give('Direct drum burnt.');
    expect((await read()).state).toBe('to approve');
    await approve(estimateId);
    // 2,127.50 + 19.00 + 19.00 × 8.875 % = 1.68625, so 1.69: 2,148.19.
    let now = await read();
    expect(now).toMatchObject({ state: 'approved', approved: { upTo_cents: 214_819, by: 'RA', how: 'phone' } });
    expect(now.changesSinceApproval?.lines).toEqual([]);

    // Cheaper stays approved, and the difference is shown line by line.
    const cheaper = { ...washer, quantity: '1', isTaxable: true };
    const { lineId } = await call('jobs.replaceLine', { lineId: partLine, line: cheaper, reason: 'one was good', by });
    now = await read();
    expect(now.state).toBe('approved');
    expect(now.changesSinceApproval).toEqual({
      lines: [{ lineId, description: 'Thrust washer', was_cents: 1_900, is_cents: 950, difference_cents: -950 }],
      // 9.50 × 8.875 % = 0.843125, so 0.84; 1.69 − 0.84.
      tax_difference_cents: -85,
      total_difference_cents: -1_035,
    });

    await add({ ...washer, kind: 'sublet', description: 'Converter rebuilt', quantity: '1', unitPrice: '240' });
    now = await read();
    expect([now.state, now.isGivenAsItStands]).toEqual(['over', false]);
    const second = await give('Direct drum burnt; converter full of lining.');
    expect(second.number).toBe(2);
    expect((await read()).state).toBe('over');
    await approve(second.estimateId, { how: 'in person', upTo: '2500' });
    now = await read();
    expect(now).toMatchObject({ state: 'approved', approved: { estimateNumber: 2, upTo_cents: 250_000 } });
    expect(now.estimates.map((each) => [each.number, each.totals.total_cents, each.lineIds.length])).toEqual([
      // 2,148.19 − 10.35 + 240.00 by hand.
      [2, 237_784, 3],
      [1, 214_819, 2],
    ]);
  });

  test('what was given keeps its figures when the rates change', async () => {
    const { call, terms, add, give, read } = await shopWithTerms();
    await add({ ...washer, isTaxable: true });
    await give();
    const before = (await read()).estimates;
    await call('jobs.setMoneyTerms', { ...terms, taxRate: '10' });
    const now = await read();
    expect(now.estimates).toEqual(before);
    // 19.00 × 10 %.
    expect(now.totals.tax_cents).toBe(190);
    expect(now.isGivenAsItStands).toBe(false);
  });

  test('refusals: no line, the same again, an old estimate, a day that cannot be', async () => {
    const { refusal, jobId, by, add, give } = await shopWithTerms();
    expect(await refusal('jobs.giveEstimate', { jobId, whatWasFound: '', by })).toMatchObject({ code: 'no-lines' });
    await add(labour);
    const { estimateId } = await give('worn');
    const same = { jobId, whatWasFound: 'worn', by };
    expect(await refusal('jobs.giveEstimate', same)).toMatchObject({ code: 'said-already' });
    const said = { estimateId, approvedBy: 'Tam Okoro', how: 'phone', upTo: '', approvedOn: null, note: '', by };
    // The test clock stands on 23 November 2026.
    expect(await refusal('jobs.approveEstimate', { ...said, approvedOn: '2026-11-25' })).toMatchObject({
      code: 'not-yet',
    });
    expect(await refusal('jobs.approveEstimate', { ...said, approvedOn: '2026-11-21' })).toMatchObject({
      code: 'before-given',
    });
    await add(washer);
    await give('worn');
    expect(await refusal('jobs.approveEstimate', said)).toMatchObject({ code: 'not-the-newest' });
  });
});

describe('deposits', () => {
  test('the balance is the total less what was received, and no more is given back than is held', async () => {
    const { call, refusal, jobId, by, add, read } = await shopWithTerms();
    await add(labour);
    const paid = (amount: string) => ({ jobId, amount, how: 'card', note: '', by });
    await call('jobs.recordDeposit', paid('500'));
    await call('jobs.recordDeposit', paid('-120.50'));
    expect(await refusal('jobs.recordDeposit', paid('-379.51'))).toMatchObject({
      code: 'more-than-held',
      message: 'Only 379.50 is held.',
    });
    expect(await refusal('jobs.recordDeposit', paid('0'))).toMatchObject({ field: 'amount' });
    const { deposited_cents, balance_cents } = await read();
    // 2,127.50 − 379.50.
    expect([deposited_cents, balance_cents]).toEqual([37_950, 174_800]);
  });
});

test('a closed job takes nothing, and keeps the rates it was closed under', async () => {
  const { call, refusal, jobId, by, terms, add, give, read, closeJob } = await shopWithTerms();
  const lineId = await add({ ...washer, isTaxable: true });
  const { estimateId } = await give();
  await closeJob();
  await call('jobs.setMoneyTerms', { ...terms, taxRate: '50' });
  // 19.00 × 8.875 % as it was.
  expect((await read()).totals.tax_cents).toBe(169);
  const said = { approvedBy: 'T', how: 'phone', upTo: '', approvedOn: null, note: '', by };
  const calls: ReadonlyArray<readonly [string, object]> = [
    ['jobs.addLine', { jobId, line: washer, by }],
    ['jobs.replaceLine', { lineId, line: washer, reason: 'x', by }],
    ['jobs.takeLineOff', { lineId, reason: 'x', by }],
    ['jobs.giveEstimate', { jobId, whatWasFound: 'more', by }],
    ['jobs.approveEstimate', { estimateId, ...said }],
    ['jobs.recordDeposit', { jobId, amount: '1', how: 'cash', note: '', by }],
  ];
  for (const [method, input] of calls) expect(await refusal(method, input)).toMatchObject({ code: 'job-closed' });
});
