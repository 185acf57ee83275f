// The key that keeps what was changed in one group, and what became of it.
import type { Settings } from '../../../app/shop/shop.contract.ts';
import { Button } from '../../components/Button.tsx';
import { Notice } from '../../components/Notice.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import type { Write } from '../../rpc/use-write.ts';
import styles from './KeepKey.module.css';

type KeepKeyProps = { write: Write<'shop.changeSettings'>; isChanged: boolean };

export function KeepKey({ write, isChanged }: KeepKeyProps) {
  return (
    <div className={styles.line}>
      <Button type="submit" isDisabled={!isChanged} isPending={write.isPending}>
        Keep these
      </Button>
      {write.isSuccess && !isChanged && <Notice kind="done">Kept.</Notice>}
      <FailureSentence error={write.error} />
    </div>
  );
}

/** Only what differs from what is set. */
export function changed(typed: Partial<Settings>, settings: Settings): Partial<Settings> {
  const entries = Object.entries(typed).filter(([name, value]) => settings[name as keyof Settings] !== value);
  return Object.fromEntries(entries) as Partial<Settings>;
}
