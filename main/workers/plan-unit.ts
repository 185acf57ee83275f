// Asks a worker to share the plates out to many packs, so that every window goes on while it searches.
import { Worker } from 'node:worker_threads';
import type { UnitPlan } from '../../app/packs/packs.contract.ts';
import type { PackToPlan } from '../../app/packs/swap-search.ts';
import type { UnitObjective } from '../../app/packs/unit-plan.ts';
import { resourceLimits } from './resource-limits.ts';

const worker = new URL(
  import.meta.url.endsWith('.ts') ? './plan-unit.worker.ts' : './plan-unit.worker.js',
  import.meta.url,
);

export type UnitToPlan = { readonly asked: readonly PackToPlan[]; readonly objective: UnitObjective };

/** What `planUnit` of app/packs/unit-plan.ts answers. */
export function planInWorker(toPlan: UnitToPlan): Promise<UnitPlan> {
  return new Promise((planned, failed) => {
    const planning = new Worker(worker, { workerData: toPlan, resourceLimits });
    planning.once('message', planned);
    planning.once('error', failed);
    planning.once('exit', () => failed(new Error('the planner stopped before it was done')));
  });
}
