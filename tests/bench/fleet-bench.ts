// How the survival statistics grow with the number of builds.
import { cox } from '../../app/statistics/cox.ts';
import { kaplanMeier } from '../../app/statistics/kaplan-meier.ts';
import { logRank } from '../../app/statistics/log-rank.ts';
import { median, milliseconds, printTable, timed } from './measure.ts';
import { type Draw, seeded } from './seeded.ts';

const repeats = 5;

/** Prints what comes out; there is nothing to agree with. */
export async function benchFleet(): Promise<boolean> {
  console.log(
    `\nComebacks of a fleet: days to a tenth of them, the rest censored, many days shared; median of ${repeats} seeded fleets.`,
  );
  console.log('Cox with one covariate and ties by Efron; the growth is from the row above.');
  warmUp();
  let before: number | null = null;
  const rows: string[][] = [];
  for (const builds of [10_000, 20_000, 50_000, 100_000]) {
    const fleets = Array.from({ length: repeats }, (_, place) => fleet(seeded(builds + place), builds));
    const coxTime = median(fleets.map(({ followUp, x }) => timed(() => cox(followUp, x, 'efron')).milliseconds));
    const curve = median(fleets.map(({ followUp }) => timed(() => kaplanMeier(followUp)).milliseconds));
    const rank = median(fleets.map(({ followUp, group }) => timed(() => logRank(followUp, group)).milliseconds));
    const growth = before === null ? '' : `${(coxTime / before).toFixed(1)} ×`;
    rows.push([builds.toLocaleString('en'), milliseconds(coxTime), growth, milliseconds(curve), milliseconds(rank)]);
    before = coxTime;
  }
  printTable(['builds', 'Cox ms', 'growth', 'Kaplan–Meier ms', 'log-rank ms'], rows);
  return true;
}

function warmUp(): void {
  const { followUp, x, group } = fleet(seeded(1), 2000);
  cox(followUp, x, 'efron');
  kaplanMeier(followUp);
  logRank(followUp, group);
}

function fleet(draw: Draw, builds: number) {
  const x = Array.from({ length: builds }, () => draw.normal(0, 1));
  const time = x.map(() => draw.whole(1, 1000));
  const event = x.map((each) => (draw.normal(each * 0.3, 1) > 1.3 ? 1 : 0) as 0 | 1);
  const group = x.map((each) => (each > 0 ? 'loose' : 'tight'));
  return { followUp: { time, event }, x, group };
}
