// The register of gauges, their checks and tests, and the lines they speak over.
import type { Round } from './years-writes.ts';

export async function writeOfTheGauges({ call, turn, by, today }: Round): Promise<void> {
  const card = { kind: 'dial plunger', tag: `New dial ${turn}`, unit: 'thou', resolution: '1' } as const;
  const known = { permittedError: '0.5', statedIn: 'certificate', offSquareDegrees: 5, serial: '', intervalDays: 90 };
  const { gaugeId } = await call('gauges.saveGauge', { gaugeId: null, ...card, ...known, by });
  const points = [
    { nominal: '50', read: '50' },
    { nominal: '100', read: '100.2' },
  ];
  await call('gauges.recordCheck', { gaugeId, against: 'blocks', checkedOn: today, points, note: '', by });
  await call('gauges.retireGauge', { gaugeId, isRetired: true, by });
  const pair = { first: 'air', second: 'feeler', firstTyped: '30', secondTyped: '31 33', by } as const;
  await call('gauges.addPair', { what: `Pack ${turn}`, ...pair });
  const { studyId } = await call('gauges.startStudy', {
    name: `Test ${turn}`,
    method: 'dial',
    gaugeId: null,
    parts: ['A', 'B'],
    people: [1, 2],
    trials: 2,
    tolerance: '',
    by,
  });
  const asked = await call('gauges.getStudy', { studyId });
  const first = asked.next;
  if (!first) throw new Error('a new test asks for no reading');
  const read = { studyId, place: first.place, by: first.initials === 'RA' ? 1 : 2 };
  await call('gauges.recordStudyRead', { ...read, typed: '30' });
  await call('gauges.supersedeStudyRead', { ...read, typed: '31', reason: 'misread' });
  const line = {
    source: 'practice',
    name: `Practice ${turn}`,
    practice: 'steady',
    pattern: '{number}',
    unit: 'mm',
    isReversed: false,
    step_nm: 1000,
    stillWithin_steps: 5,
    stillFor_ms: 500,
    every_ms: 50,
  } as const;
  const { lineId } = await call('indicators.addLine', line);
  await call('indicators.changeLine', { lineId, settings: { ...line, every_ms: 100 } });
  const other = await call('indicators.addLine', { ...line, name: `Old ${turn}` });
  await call('indicators.retireLine', { lineId: other.lineId });
}
