// `npm run kill -- --rounds 500 [--seed 7] [--act work]`: the kill tests at length; it prints what was acknowledged and
// what was lost. An act is `work` (one short act after another), `migration`, `backup`, `whole backup` or `restore`; all
// of them, one after the other, where none is named, the long ones a tenth of the rounds each.
import { parseArgs } from 'node:util';
import { seeded } from '../bench/seeded.ts';
import { killRounds } from './kill-rounds.ts';
import { longRounds } from './long-rounds.ts';
import { longActs } from './one-act.ts';

const { values } = parseArgs({
  options: { rounds: { type: 'string', default: '30' }, seed: { type: 'string' }, act: { type: 'string' } },
});
const rounds = Number(values.rounds);
const seed = Number(values.seed ?? Date.now() % 1_000_000);
const acts = ['work', ...longActs].filter((act) => (values.act ?? act) === act);
if (!Number.isSafeInteger(rounds) || rounds < 1 || !Number.isSafeInteger(seed) || acts.length === 0) {
  console.error(`Give whole numbers and an act: --rounds 500 --seed 7 --act work (or ${longActs.join(', ')})`);
  process.exit(2);
}
console.log(`seed ${seed}`);
const losses: string[] = [];
const lines: string[] = [];
if (acts.includes('work')) {
  const sum = await killRounds(rounds, seed, console.log);
  losses.push(...sum.losses);
  lines.push(
    `work: ${sum.rounds} rounds, ${sum.acknowledged} writes acknowledged, ${sum.kills} kills, ${sum.losses.length} losses ` +
      `(${sum.unacknowledgedYetWhole} acts were whole in the file before they were acknowledged)`,
  );
}
for (const act of longActs.filter((each) => acts.includes(each))) {
  const most = values.act === undefined ? Math.ceil(rounds / 10) : rounds;
  const sum = await longRounds(act, most, seeded(seed), console.log);
  losses.push(...sum.losses);
  lines.push(
    `${act}: ${sum.kills} kills, ${sum.tooLate} of them after it was done, ${sum.losses.length} losses ` +
      `(${sum.tookEffect} had taken effect before they were done)`,
  );
}
for (const loss of losses) console.log(`LOSS ${loss}`);
for (const line of lines) console.log(line);
process.exit(losses.length === 0 ? 0 : 1);
