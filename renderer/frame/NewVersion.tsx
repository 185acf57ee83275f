// In the rail, while a newer version of the program is there or was kept back: the way to what it says of itself.
import { Link } from '@tanstack/react-router';
import { useRead } from '../rpc/use-read.ts';

export function NewVersion({ className }: { className: string | undefined }) {
  const { data } = useRead('updates.getUpdates', {});
  if (!data) return null;
  const { standing, keptBack } = data;
  const isTold = standing.kind === 'offered' || standing.kind === 'fetched' || keptBack !== '';
  if (!isTold) return null;
  return (
    <Link to="/shop" className={className}>
      {'version' in standing ? `Version ${standing.version}: see Shop` : 'Version: see Shop'}
    </Link>
  );
}
