// What goes to the worker that answers questions about the fleet, and what comes back.
import type { FleetAnswer, FleetSelection } from '../../app/comebacks/fleet.contract.ts';
import type { FleetProgress } from '../../app/comebacks/fleet-progress.ts';

export type ToFleetWorker = {
  readonly question: number;
  readonly selection: FleetSelection;
  /** The moment it was asked. */
  readonly at: string;
};

export type FromFleetWorker = { readonly question: number } & (
  | { readonly progress: FleetProgress }
  /** null: ended before it was answered. */
  | { readonly answer: FleetAnswer | null }
  /** An error sheds its code on the way. */
  | { readonly failure: { readonly message: string; readonly stack: string; readonly code: string } }
);
