// The example unit built: its packs in the band, then everything else read and answered, in the order of the bench.
import { checkNamed, type JobAtHand, readCheck } from './kx3-job.ts';
import { answerLists } from './kx3-lists.ts';
import { type RefusedCaller, swapIntoBand, type Teller } from './kx3-swaps.ts';

/** Builds the unit: packs brought into the band by swaps, then everything else read. */
export async function buildKx3(job: JobAtHand, tell: Teller, refused: RefusedCaller): Promise<void> {
  await swapIntoBand(job, tell, refused);
  await fitWasher(job, tell);
  await readMechanical(job, tell);
  await answerLists(job, 'build');
  await readCircuits(job);
  await answerLists(job, 'final');
}

async function fitWasher(job: JobAtHand, tell: Teller): Promise<void> {
  const { call, jobId, sheet, by } = job;
  const { checkId } = checkNamed(sheet, 'Front end play');
  const { sentence } = await call('packs.planShim', { jobId, checkId, shimIn: '66' });
  tell(`Front end play: ${sentence}`);
  const { takeId } = await call('readings.startTake', {
    jobId,
    checkId,
    phase: 'final',
    mode: 'final',
    setup: null,
    note: 'washer 78.0',
    by,
  });
  const { readingId } = await call('readings.recordReading', { takeId, spot: 1, typed: '12', by });
  await call('readings.supersedeReading', { readingId, typed: '19', reason: 'misread by a number on the face', by });
  tell('Front end play: 12 was misread and superseded; 19.0 read.');
}

async function readMechanical(job: JobAtHand, tell: Teller): Promise<void> {
  const reads: ReadonlyArray<readonly [name: string, typed: string, note?: string]> = [
    ['Rear end play', '11'],
    ['Pump gear side', '1.4'],
    ['Outer gear to pocket', '5'],
    ['Inner gear to crescent', '7'],
    ['Stator bushing', '1.5025 1.5000 in'],
    ['Converter hub to pump bushing', '3.0', 'bushing changed'],
    ['Sealing ring side', '90.0 88.0'],
    ['Servo travel', '125'],
    ['Converter hub depth', '1 3/16'],
    ['Converter pull-out', '5/32'],
  ];
  for (const [name, typed, note] of reads) await readCheck(job, name, 'final', [typed], note ? { note } : {});
  const groove = await readCheck(job, 'Sealing-ring groove width', 'final', ['90.0']);
  tell(`Sealing-ring groove: ${groove.evaluation.variantName}.`);
}

async function readCircuits(job: JobAtHand): Promise<void> {
  const reads: ReadonlyArray<readonly [name: string, typed: string]> = [
    ['Port A, Forward', '3'],
    ['Port B, Direct', '4'],
    ['Port C3, Low/reverse', '6'],
    ['Port C4, servo apply', '2'],
    ['Line, idle, P/N', '82'],
    ['Line, idle, D', '82'],
    ['Line, idle, R', '128'],
    ['Line, full throttle, D', '164'],
    ['Line, full throttle, R', '262'],
    ['Cooler flow in 30 s', '1.3'],
    ['Pump bolts', '18'],
    ['Extension housing', '24'],
    ['Band locknut', '35'],
    ['Valve body', '100'],
    ['Pan', '120'],
  ];
  for (const [name, typed] of reads) await readCheck(job, name, 'final', [typed]);
}
