// What comebacks cost and what was delivered beside it, out of the file.
import { costCells, costOfCauses } from '../../app/comebacks/cost.ts';
import type { Reading } from '../database/tables.ts';
import * as repository from './cost.repository.ts';

export async function getCost(reading: Reading) {
  const rows = await repository.listCostly(reading);
  const causes = Map.groupBy(await repository.listStandingCauses(reading), (row) => row.comeback_id);
  const comebacks = rows.map((row) => ({
    familyId: row.family_id,
    cameBackOn: row.came_back_on,
    outcome: row.outcome,
    covered: row.covered,
    cost_cents: row.cost_cents,
    causes: [...new Set((causes.get(row.comeback_id) ?? []).map(({ cause }) => cause))],
  }));
  const cells = costCells(comebacks, await repository.countDelivered(reading));
  const families = await repository.listFamilyNames(reading);
  return {
    families: families.filter(({ familyId }) => cells.some((cell) => cell.familyId === familyId)),
    cells,
    causes: costOfCauses(comebacks),
  };
}
