// What sits in the pack now, drawn to scale, with its clearance where one was read.
import { useAtCheck } from './at-check.ts';
import { PackDrawing } from './PackDrawing.tsx';
import { stackBuilt } from './pack-stack.ts';

/** Nothing where the check has no pack, and a word where nobody entered what sits in it. */
export function PackNow() {
  const { pack } = useAtCheck();
  const mockUp = pack?.mockUps.at(-1);
  if (!pack) return null;
  if (!mockUp) return <p className="quiet">What sits in the {pack.name} pack is not in the book yet.</p>;
  return (
    <PackDrawing now={stackBuilt(pack, mockUp, mockUp.read?.mean_nm ?? null)}>
      <h2>
        {pack.name} pack, {mockUp.number === 0 ? 'as found' : `mock-up ${mockUp.number}`}
        {mockUp.note !== '' && mockUp.number > 0 && <span className="quiet">: {mockUp.note}</span>}
      </h2>
    </PackDrawing>
  );
}
