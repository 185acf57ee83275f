// Benchmarks: `npm run bench`, or `npm run bench -- swaps` for one section. Exits 1 where an optimum differs.
import { type Highs, loadHighs } from './highs-models.ts';
import { machine } from './measure.ts';
import { benchNextSwaps } from './next-swaps-bench.ts';

const sections: Record<string, (highs: Highs) => boolean> = {
  swaps: benchNextSwaps,
};

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(name in sections));
if (unknown.length > 0) {
  console.error(`No section is called ${unknown.join(' or ')}. There are: ${Object.keys(sections).join(', ')}.`);
  process.exit(2);
}
console.log(machine());
const highs = await loadHighs();
const results = Object.entries(sections)
  .filter(([name]) => asked.length === 0 || asked.includes(name))
  .map(([, run]) => run(highs));
process.exit(results.every(Boolean) ? 0 : 1);
