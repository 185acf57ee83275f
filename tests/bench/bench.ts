// Benchmarks: `npm run bench`, or `npm run bench -- swaps` for one section. Exits 1 where an optimum differs.
import { benchAccept } from './accept-bench.ts';
import { benchComebacks } from './comebacks-bench.ts';
import { benchFleet } from './fleet-bench.ts';
import { benchJointly } from './joint-bench.ts';
import { machine } from './measure.ts';
import { benchNextSwaps } from './next-swaps-bench.ts';
import { benchPapers } from './papers-bench.ts';
import { benchRebuilds } from './rebuilds-bench.ts';
import { benchYears } from './years/years-bench.ts';

/** Each prints its table and returns whether everything agreed. */
const sections: Record<string, () => Promise<boolean>> = {
  swaps: benchNextSwaps,
  jointly: benchJointly,
  rebuilds: benchRebuilds,
  fleet: benchFleet,
  accept: benchAccept,
  comebacks: benchComebacks,
  papers: benchPapers,
  years: benchYears,
};

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(name in sections));
if (unknown.length > 0) {
  console.error(`No section is called ${unknown.join(' or ')}. There are: ${Object.keys(sections).join(', ')}.`);
  process.exit(2);
}
console.log(machine());
let agrees = true;
for (const [name, run] of Object.entries(sections)) {
  if (asked.length === 0 || asked.includes(name)) agrees = (await run()) && agrees;
}
process.exit(agrees ? 0 : 1);
