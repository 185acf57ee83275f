// What the fleet says of a shop file that holds a published set, beside the published numbers and the calculator's for the
// same columns. [M] published value quoted from memory, [R] computed with R 4.2.2 (survival 3.5-3).
import { expect, test } from 'vitest';
import { ask as askConsole } from '../headless/ask-calculator.ts';
import { lung } from '../published/lung.ts';
import { expectRelative } from '../statistics/relative.ts';
import { daysBefore, shopWithBuilds, today } from './fleet-shop.ts';

const thou = 25_400;

/** A subject as a build: followed for so many days until it came back, or until today. */
function buildOf(time: number, event: number, group: number) {
  const deliveredOn = daysBefore(today, event === 1 ? time + 10 : time);
  return {
    deliveredOn,
    use: group === 0 ? ('street' as const) : ('tow' as const),
    by: group + 1,
    // One thou more in one group than in the other, so that the step of the number is the step of the group.
    read: { 'Stator bushing': (group + 1) * thou },
    visits: event === 1 ? [{ on: daysBefore(deliveredOn, -time), outcome: 'ours' }] : [],
  };
}

async function askOf(columns: { time: readonly number[]; event: readonly number[]; group: readonly number[] }) {
  const builds = columns.time.map((time, i) => buildOf(time, columns.event[i]!, columns.group[i]!));
  const { ask } = await shopWithBuilds(builds);
  const answer = await ask({ groupBy: 'Use' });
  const { survival, wear, compared, factors } = answer;
  if (!survival.isEnough || !wear.isEnough || !compared?.isEnough || !factors.isEnough) throw new Error('not enough');
  const factor = (name: string) => factors.tried.find((each) => each.name === name)!;
  return { answer, curve: survival.curve, wear, compared, factor };
}

/** What the console prints, which names each number. */
// biome-ignore lint/suspicious/noExplicitAny: read by name only
const askCalculator = (name: string, input: object) => askConsole(name, input) as any;

/** Everything the screen shows is what the calculator prints for the same columns. */
function expectAsCalculated(
  { time, event, group }: { time: readonly number[]; event: readonly number[]; group: readonly number[] },
  { curve, wear, compared, factor }: Awaited<ReturnType<typeof askOf>>,
) {
  const survival = askCalculator('kaplan-meier', { time, event });
  expect(curve.median).toBe(survival.median);
  expect(curve.steps).toHaveLength(survival.steps.length);
  for (const [i, step] of curve.steps.entries()) expect(survival.steps[i]).toMatchObject(step);
  const line = askCalculator('weibull', { time, event });
  expect(wear).toMatchObject({
    shape: line.shape,
    scale: line.scale,
    b10: line.b10,
    shapeInterval: line.shapeInterval,
  });
  const test = askCalculator('log-rank', { time, event, group });
  expectRelative(compared.chiSquare, test.chiSquare, 1e-9);
  expectRelative(compared.p, test.p, 1e-9);
  const hazard = askCalculator('cox', { time, event, x: group });
  const use = factor('Use');
  // Told for the group that came back more often.
  const ratio = use.level === 'tow' ? hazard.hazardRatio : 1 / hazard.hazardRatio;
  expectRelative(use.ratio, ratio, 1e-9);
  expectRelative(factor('Stator bushing').ratio, Math.exp(Math.abs(hazard.coefficient)), 1e-9);
  expectRelative(
    use.p,
    askCalculator('chi-square', { chiSquare: hazard.likelihoodRatio, degreesOfFreedom: 1 }).upper,
    1e-9,
  );
}

test('6-MP against placebo: the published curve, log-rank and hazard', async () => {
  const sixMp = [6, 6, 6, -6, 7, -9, 10, -10, -11, 13, 16, -17, -19, -20, 22, 23, -25, -32, -32, -34, -35];
  const placebo = [1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23];
  const all = [...sixMp, ...placebo];
  const columns = {
    time: all.map(Math.abs),
    event: all.map((time) => (time > 0 ? 1 : 0)),
    group: all.map((_, i) => (i < sixMp.length ? 0 : 1)),
  };
  const told = await askOf(columns);
  expect(told.answer).toMatchObject({ selected: 42, followed: 42, events: 30, leftOut: [], fromDelivery: 0 });
  // [M] Kaplan–Meier of 6-MP; log-rank 16.79; Cox by Efron 1.572; [R] the rest.
  const treated = told.compared.curves.find(({ level }) => level === 'street')!.curve;
  const published = [0.857, 0.807, 0.753, 0.69, 0.627, 0.538, 0.448];
  expect(treated.steps.map(({ survival }) => survival.toFixed(3))).toEqual(published.map((each) => each.toFixed(3)));
  expectRelative(told.compared.chiSquare, 16.79294099, 1e-9);
  const use = told.factor('Use');
  expect(use).toMatchObject({ level: 'tow', by: 'cox', builds: 42, events: 30, unrecorded: 0, isFound: true });
  expectRelative(Math.log(use.ratio!), 1.572125149, 1e-9);
  expectRelative(use.interval[0], 2.1465082, 5e-8);
  expectRelative(use.interval[1], 10.809311, 5e-8);
  expectAsCalculated(columns, told);
});

test('survival::lung by sex', async () => {
  const columns = { time: lung.time, event: lung.event, group: lung.sex.map((sex) => sex - 1) };
  const told = await askOf(columns);
  // [M] log-rank 10.3, coefficient −0.5310, median 310; [R] the rest.
  expect(told.answer).toMatchObject({ selected: 228, followed: 228, events: 165 });
  expect(told.curve.median).toBe(310);
  expectRelative(told.compared.chiSquare, 10.32674195, 1e-9);
  expectRelative(told.wear.shape, 1.316840172, 2e-9);
  expectRelative(told.wear.scale, 417.7586654, 2e-9);
  const use = told.factor('Use');
  expect(use.level).toBe('street');
  expectRelative(Math.log(use.ratio!), 0.53102354, 1e-8);
  expectAsCalculated(columns, told);
});
