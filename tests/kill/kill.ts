// `npm run kill -- --rounds 500 [--seed 7]`: the kill test at length; it prints what was acknowledged and what was lost.
import { parseArgs } from 'node:util';
import { killRounds } from './kill-rounds.ts';

const { values } = parseArgs({ options: { rounds: { type: 'string', default: '30' }, seed: { type: 'string' } } });
const rounds = Number(values.rounds);
const seed = Number(values.seed ?? Date.now() % 1_000_000);
if (!Number.isSafeInteger(rounds) || rounds < 1 || !Number.isSafeInteger(seed)) {
  console.error('Give whole numbers: --rounds 500 --seed 7');
  process.exit(2);
}
console.log(`seed ${seed}`);
const sum = await killRounds(rounds, seed, console.log);
for (const loss of sum.losses) console.log(`LOSS ${loss}`);
console.log(
  `${sum.rounds} rounds, ${sum.acknowledged} writes acknowledged, ${sum.kills} kills, ${sum.losses.length} losses ` +
    `(${sum.unacknowledgedYetWhole} acts were whole in the file before they were acknowledged)`,
);
process.exit(sum.losses.length === 0 ? 0 : 1);
