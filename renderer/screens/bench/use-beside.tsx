// What stands beside the work: the pack to scale, else how the check read before.
import type { ReactNode } from 'react';
import type { Take } from '../../../app/readings/readings.contract.ts';
import { useAtCheck } from './at-check.ts';
import { EarlierTakes } from './EarlierTakes.tsx';
import { PackDrawing } from './PackDrawing.tsx';
import { stackBuilt } from './pack-stack.ts';
import { wasRead } from './reading-plan.ts';

/** Undefined where there is nothing to show. `shown` is the take that the work itself shows. */
export function useBeside(shown: Take | null = null): ReactNode {
  const { pack, takes } = useAtCheck();
  const mockUp = pack?.mockUps.at(-1);
  if (!pack || !mockUp) {
    const earlier = takes.filter((take) => take.takeId !== shown?.takeId);
    return wasRead(earlier) ? <EarlierTakes takes={earlier} /> : undefined;
  }
  return (
    <PackDrawing now={stackBuilt(pack, mockUp, mockUp.read?.mean_nm ?? null)}>
      <h2>
        {pack.name} pack, {mockUp.number === 0 ? 'as found' : `mock-up ${mockUp.number}`}
      </h2>
    </PackDrawing>
  );
}
