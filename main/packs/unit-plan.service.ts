// All open packs of a unit planned at once: read in one view of the file, then searched outside of it.
import type { UnitPlan } from '../../app/packs/packs.contract.ts';
import type { PackToPlan } from '../../app/packs/swap-search.ts';
import { planUnit as plan, type UnitObjective } from '../../app/packs/unit-plan.ts';
import type { OpenShop } from '../database/open-shop.ts';
import { planInWorker } from '../workers/plan-unit.ts';
import { packsOfUnit } from './packs.service.ts';

/** Two packs took 78 ms at worst (DEVELOPERS.md, packs that share one bin); more of them may take long. */
const mostAtOnce = 2;

/** null where no pack is mocked up and open. */
export async function planUnit(
  shop: OpenShop,
  { jobId, objective }: { jobId: number; objective: UnitObjective },
): Promise<UnitPlan | null> {
  return planPacks(await shop.read((reading) => packsOfUnit(reading, jobId)), objective);
}

export async function planPacks(asked: readonly PackToPlan[], objective: UnitObjective): Promise<UnitPlan | null> {
  if (asked.length === 0) return null;
  return asked.length > mostAtOnce ? planInWorker({ asked, objective }) : plan(asked, objective);
}
