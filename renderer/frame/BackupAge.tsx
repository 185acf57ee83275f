// How old the newest backup is, in the rail: a shop learns of a stick left at home before it needs it.
import { Link } from '@tanstack/react-router';
import type { Backups } from '../../app/backups/backups.contract.ts';
import { useRead } from '../rpc/use-read.ts';
import { sayAge } from '../text/say-date.ts';

export function BackupAge({ className }: { className: string | undefined }) {
  const { data } = useRead('backups.getBackups', {});
  if (!data) return null;
  return (
    <Link to="/shop" className={className}>
      {wordsOf(data)}
    </Link>
  );
}

function wordsOf({ backups, secondPlace, trouble, broughtBack }: Backups): string {
  const [newest] = backups;
  if (trouble !== '') return 'Backup: see Shop';
  if (broughtBack !== '') return 'Brought back: see Shop';
  const here = newest ? `Backup ${agoWords(newest.at)}` : 'No backup yet';
  if (secondPlace === null) return here;
  return `${here}, second place ${secondPlace.newestAt === null ? 'none yet' : agoWords(secondPlace.newestAt)}`;
}

function agoWords(instant: string): string {
  const age = sayAge(instant);
  return age === 'today' ? age : `${age} ago`;
}
