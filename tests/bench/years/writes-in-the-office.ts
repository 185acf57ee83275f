// The estimate, the yes and the money; units that leave and come back; what the shop has set.
import type { Ticket } from './writes-at-the-bench.ts';
import type { Round } from './years-writes.ts';

export async function writeInTheOffice(round: Round, ticket: Ticket): Promise<void> {
  await agree(round, ticket);
  await comeBack(round);
  await setUp(round);
  // Every third ticket stays open, so that the questions find some that are.
  if (round.turn % 3 !== 0) await handOver(round, ticket.jobId);
}

async function agree({ call, by }: Round, { jobId, findingId }: Ticket): Promise<void> {
  const rebuild = { kind: 'labour', description: 'Rebuild', quantity: '18', unitCost: '', isTaxable: false } as const;
  const line = { ...rebuild, unitPrice: '115.00', batchId: null };
  const { lineId } = await call('jobs.addLine', { jobId, line, by });
  const longer = { ...line, quantity: '20' };
  const replaced = await call('jobs.replaceLine', { lineId, line: longer, reason: 'the case too', by });
  await call('jobs.chargeFinding', { findingId, lineId: replaced.lineId, by });
  const other = await call('jobs.addLine', { jobId, line, by });
  await call('jobs.takeLineOff', { lineId: other.lineId, reason: 'twice', by });
  const { estimateId } = await call('jobs.giveEstimate', { jobId, whatWasFound: 'Burnt frictions.', by });
  const yes = { approvedBy: 'Tam Okoro', how: 'phone', upTo: '', approvedOn: null, note: '' } as const;
  await call('jobs.approveEstimate', { estimateId, ...yes, by });
  await call('jobs.recordDeposit', { jobId, amount: '500', how: 'card', note: '', by });
}

async function handOver({ call, by, today }: Round, jobId: number): Promise<void> {
  await call('jobs.signOff', { jobId, place: 'in vehicle', note: '', by });
  const to = { deliveredTo: 'Tam Okoro', deliveredOn: today, distance: null, handedOverById: by };
  const terms = { months: 24, distance: null, passes: null };
  await call('jobs.deliver', { jobId, ...to, warranty: { terms, inServiceOn: null }, reason: 'they know', by });
  await call('jobs.changeWarranty', { jobId, terms, inServiceOn: today, reason: '', by });
  await call('jobs.correctDelivery', { jobId, ...to, deliveredTo: 'Mrs Okoro', reason: 'she came for it', by });
  await call('jobs.takeBackDelivery', { jobId, reason: 'a leak on the way out', by });
  await call('jobs.deliver', { jobId, ...to, warranty: { terms, inServiceOn: today }, reason: 'they know', by });
}

async function comeBack({ call, turn, by, today, one }: Round): Promise<void> {
  const builtJobId = one(
    'select job_id from deliveries where job_id not in (select built_job_id from comebacks) order by job_id desc limit 1 offset ?',
    turn * 5,
  );
  const customerId = one('select customer_id from jobs where job_id = ?', builtJobId);
  const unitId = one('select unit_id from jobs where job_id = ?', builtJobId);
  const door = { customer: { customerId }, unit: { unitId }, complaint: 'Slips again.', caseTag: '', distance: null };
  const said = { cameBackOn: today, customerSays: 'Slips again.', distance: null, covered: 'in warranty' } as const;
  const { comebackId } = await call('comebacks.logComeback', {
    builtJobId,
    ticket: { checkIn: door },
    ...said,
    coveredNote: '',
    by,
  });
  const card = { ...said, coveredNote: '', outcome: 'ours', note: '', cost: '350', reason: 'looked at' } as const;
  await call('comebacks.writeCard', { comebackId, ...card, by });
  const cause = { comebackId, cause: 'too tight', packId: null, by } as const;
  await call('comebacks.sayCause', { ...cause, certainty: 'suspected', note: '' });
  await call('comebacks.takeBackCause', { ...cause, reason: 'it was not' });
  const why = { shares: 'batch', what: `Batch FB-${turn}`, whatToCheck: 'the pan', reason: 'flaked twice' } as const;
  await call('comebacks.putOnList', { jobIds: [builtJobId], ...why, by });
  const unitToCallId = one('select max(unit_to_call_id) from units_to_call');
  await call('comebacks.noteCall', { unitToCallId, cameOfIt: 'reached', note: '', by });
}

async function setUp({ call, turn, by, familyId, sheet, folder, today }: Round): Promise<void> {
  await call('shop.changeSettings', { warrantyMonths: 24 });
  const { personId } = await call('shop.addPerson', { name: `Ben Tolland ${turn}`, initials: `B${turn}` });
  await call('shop.retirePerson', { personId });
  await call('jobs.setMoneyTerms', { labourRate: '115', taxLabel: 'Tax', taxRate: '6', isLabourTaxable: false, by });
  const [stage] = await call('jobs.listStages', {});
  if (stage) await call('jobs.changeStageNeeds', { stageId: stage.stageId, needs: [...stage.needs], by });
  await call('photos.watchFolder', { folder, by });
  const added = await call('specs.addFamily', { name: `New ${turn}`, by });
  const { packs, checks, lists } = sheet;
  await call('specs.saveSheet', {
    familyId: added.familyId,
    sheet: {
      packs: packs.map(({ packId: _, slots, ...pack }) => ({
        ...pack,
        slots: slots.map(({ slotId: __, ...slot }) => slot),
      })),
      checks: checks.map(({ checkId: _, packId: __, ...check }) => check),
      lists: lists.map(({ listId: _, packId: __, lines, ...list }) => ({
        ...list,
        lines: lines.map(({ lineId: ___, ...line }) => line),
      })),
      pictures: [],
    },
    sourceNote: `as of ${today}`,
    by,
  });
  const stageIds = (await call('jobs.listStages', {})).map(({ stageId }) => stageId);
  const small = { smallJobId: null, stageIds, checkNames: ['Front end play'], listNames: [], by };
  const { smallJobId } = await call('specs.saveSmallJob', { familyId, name: `Reseal ${turn}`, ...small });
  const { jobId } = await call('jobs.checkIn', {
    customer: { name: `Ilse Brandvold ${turn}`, phone: '', email: '' },
    unit: { familyId, serial: `KX3-25-${turn}`, vehicle: 'delivery van', use: 'street' },
    complaint: 'Drips.',
    caseTag: '',
    distance: null,
    smallJobId,
    by,
  });
  await call('jobs.widenJob', { jobId, reason: 'the pump is worn', by });
  await call('specs.dropSmallJob', { smallJobId, by });
}
