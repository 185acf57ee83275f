// A question about the fleet: its answer, how far it is while it runs, and the key that ends it.
import { useCallback, useEffect, useState } from 'react';
import type { FleetProgress } from '../../app/comebacks/fleet-progress.ts';
import type { Input, Output } from '../../app/contract/contract.ts';
import { call } from './client.ts';
import { transport } from './transport.ts';
import { type Read, useRead } from './use-read.ts';

export type FleetQuestion = {
  readonly read: Read<Output<'comebacks.askFleet'>>;
  /** null while nothing is being reckoned. */
  readonly progress: FleetProgress | null;
  readonly stop: () => void;
};

/** Asks when the selection changes and whenever something was written; null asks nothing. */
export function useFleet(selection: Input<'comebacks.askFleet'> | null): FleetQuestion {
  const read = useRead('comebacks.askFleet', selection, { keepsLast: true });
  const [progress, setProgress] = useState<FleetProgress | null>(null);
  useEffect(() => transport.subscribe('fleet', (news) => setProgress(news.isOver ? null : news)), []);
  const stop = useCallback(() => void call('comebacks.stopAsking', {}), []);
  return { read, progress, stop };
}
