// A unit comes in, is read, taken apart and put together.
import { dayAfter } from '../../../app/jobs/calendar-days.ts';
import { blankDiagnosis } from '../../../app/jobs/door.contract.ts';
import { checkNamed, packNamed, usualSetup } from '../../../main/shop/demo/kx3-job.ts';
import type { Round } from './years-writes.ts';

export type Ticket = { readonly jobId: number; readonly findingId: number };

export async function writeAtTheBench(round: Round): Promise<Ticket> {
  const { call, turn, by, familyId, sheet, today } = round;
  const { jobId } = await call('jobs.checkIn', {
    customer: { name: `Tam Okoro ${turn}`, phone: '555 0117', email: '' },
    unit: { familyId, serial: `KX3-26-${turn}`, vehicle: 'half-ton pickup', use: 'tow' },
    complaint: 'Slips 2–3 when hot.',
    caseTag: '1',
    distance: { amount: 118_400, unit: 'miles' },
    by,
  });
  await call('jobs.correctIntake', {
    jobId,
    complaint: 'Slips 2–3 when hot, bangs into reverse.',
    diagnosis: { ...blankDiagnosis, fluidColour: 'brown' },
    by,
  });
  await call('jobs.promiseDay', { jobId, on: dayAfter(today, 3), reason: '', by });
  await call('jobs.logCall', { jobId, direction: 'we called', withWhom: 'Tam Okoro', said: 'Friday is fine.', by });
  const stages = await call('jobs.listStages', {});
  for (const name of ['As found', 'Teardown', 'Build']) {
    const stageId = stages.find((stage) => stage.name === name)?.stageId ?? 0;
    await call('jobs.moveToStage', { jobId, stageId, reason: 'goes on', by });
  }
  await readPack(round, jobId, 'as found');
  await layPack(round, jobId);
  await readPack(round, jobId, 'final');
  const frontEndPlay = checkNamed(sheet, 'Front end play').checkId;
  const { takeId } = await call('readings.startTake', {
    jobId,
    checkId: frontEndPlay,
    phase: 'final',
    mode: 'final',
    setup: null,
    note: '',
    by,
  });
  await call('readings.recordReading', { takeId, spot: 1, typed: '31', by });
  await call('jobs.overrideCheck', { jobId, checkId: frontEndPlay, reason: 'the customer waits', by });
  const line = sheet.lists.find(({ when }) => when === 'build')?.lines[0]?.lineId ?? 0;
  await call('jobs.answerLine', { jobId, lineId: line, answer: { kind: 'does not apply' }, by });
  await call('clutch.stateLoad', { jobId, engineTorque: '300 lb-ft', converterRatio: '2', reason: '', by });
  return { jobId, findingId: await findAndPicture(round, jobId) };
}

async function readPack({ call, sheet, by }: Round, jobId: number, phase: 'as found' | 'final'): Promise<void> {
  const { takeId } = await call('readings.startTake', {
    jobId,
    checkId: checkNamed(sheet, 'Forward clearance').checkId,
    phase,
    mode: 'final',
    setup: usualSetup,
    note: '',
    by,
  });
  let newest = 0;
  for (let spot = 1; spot <= 4; spot += 1) {
    newest = (await call('readings.recordReading', { takeId, spot, typed: `4 ${22 + spot}`, by })).readingId;
  }
  await call('readings.supersedeReading', { readingId: newest, typed: '4 24', reason: 'misread', by });
  await call('readings.noteAtSpot', { takeId, spot: 2, what: 'lost zero', by });
}

/** As found by height, then with a steel off the shelf. */
async function layPack({ call, turn, sheet, by }: Round, jobId: number): Promise<void> {
  const pack = packNamed(sheet, 'Forward');
  const found = pack.slots.map(({ slotId, kind }) => ({
    slotId,
    from: { typed: kind === 'steel' ? '77' : kind === 'friction' ? '80' : '250' },
  }));
  await call('packs.recordMockUp', { jobId, packId: pack.packId, pieces: found, note: '', by });
  const steel = { kind: 'steel', outline: 'KX3 forward', tag: `Y${turn}`, typed: '75.5', by } as const;
  const { pieceId } = await call('stock.addPiece', steel);
  const slotId = pack.slots.find(({ kind }) => kind === 'steel')?.slotId ?? 0;
  const pieces = [{ slotId, from: { pieceId } }];
  await call('packs.recordMockUp', { jobId, packId: pack.packId, pieces, note: 'one swap', by });
}

async function findAndPicture({ call, by, jpegBase64 }: Round, jobId: number): Promise<number> {
  const bushing = {
    part: 'pump bushing',
    packId: null,
    slotId: null,
    place: null,
    condition: 'worn',
    checkId: null,
    note: '',
    thickness: '',
  } as const;
  const { findingId } = await call('jobs.recordFinding', { jobId, finding: bushing, decision: 'not decided yet', by });
  const scored = { ...bushing, condition: 'scored' } as const;
  await call('jobs.correctFinding', { findingId, finding: scored, reason: 'looked again', by });
  await call('jobs.decideFinding', { findingId, decision: 'replace', note: '', by });
  const none = await call('jobs.recordFinding', { jobId, finding: bushing, decision: 'reuse', by });
  await call('jobs.withdrawFinding', { findingId: none.findingId, reason: 'written twice', by });
  const picture = { jpegBase64, smallBase64: jpegBase64, caption: 'Pump', folderName: null };
  const mistaken = await call('photos.addPhoto', { jobId, ...picture, by });
  await call('photos.removePhoto', { photoId: mistaken.photoId, by });
  const { photoId } = await call('photos.addPhoto', { jobId, ...picture, by });
  await call('photos.describePhoto', { photoId, caption: 'Pump face', checkId: null, isInReport: true, by });
  await call('jobs.pinPhoto', { findingId, photoId, isPinned: true, by });
  await call('specs.keepPicture', { of: { photoId }, by });
  return findingId;
}
