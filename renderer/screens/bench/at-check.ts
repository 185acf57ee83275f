// The check at the bench with all that is known about it, for every step of reading it.
import { createContext, useContext } from 'react';
import type { CheckOfJob, Job } from '../../../app/jobs/jobs.contract.ts';
import type { PackOfJob } from '../../../app/packs/packs.contract.ts';
import type { Setup, Take } from '../../../app/readings/readings.contract.ts';
import type { Settings } from '../../../app/shop/shop.contract.ts';
import type { ShopWords } from '../../text/amount-words.ts';

export type AtCheck = {
  readonly job: Job;
  readonly check: CheckOfJob;
  /** The pack whose clearance it is; null for every other check. */
  readonly pack: PackOfJob | null;
  /** Oldest first. */
  readonly takes: readonly Take[];
  readonly lastSetup: Setup | null;
  readonly settings: Settings;
  readonly words: ShopWords;
  /** The person at the bench. */
  readonly by: number;
};

const AtCheckContext = createContext<AtCheck | null>(null);

export const AtCheckProvider = AtCheckContext.Provider;

export function useAtCheck(): AtCheck {
  const at = useContext(AtCheckContext);
  if (!at) throw new Error('useAtCheck outside a reading screen');
  return at;
}

/** The pack, for the steps that only a pack has. */
export function usePack(): PackOfJob {
  const { pack } = useAtCheck();
  if (!pack) throw new Error('a step of a pack at a check without one');
  return pack;
}
