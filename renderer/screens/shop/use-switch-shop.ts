// From one shop file to another: nothing that was read of the first may be seen under the second.
import { useQueryClient } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useWrite } from '../../rpc/use-write.ts';
import type { NewShop } from './new-shop.ts';

export type SwitchShop = {
  readonly create: (shop: NewShop, onDone: () => void) => void;
  readonly openDemo: () => void;
  readonly openOwn: () => void;
  readonly isBusy: boolean;
  readonly error: Error | null;
};

/** Starts or opens a shop and goes to its jobs. */
export function useSwitchShop(): SwitchShop {
  const queryClient = useQueryClient();
  const navigate = useNavigate();
  const create = useWrite('shop.createShop');
  const openDemo = useWrite('shop.openDemoShop');
  const openOwn = useWrite('shop.openOwnShop');

  const arrive = () => {
    queryClient.removeQueries({ type: 'inactive' });
    void navigate({ to: '/jobs' });
  };
  // The screen that asked may be gone by the time the shop is open, so it is the answer that is waited for, and a
  // refusal stays in the write's own error.
  const stay = () => undefined;
  return {
    create: (shop, onDone) =>
      void create.mutateAsync(shop).then(() => {
        onDone();
        arrive();
      }, stay),
    openDemo: () => void openDemo.mutateAsync({}).then(arrive, stay),
    openOwn: () => void openOwn.mutateAsync({}).then(arrive, stay),
    isBusy: create.isPending || openDemo.isPending || openOwn.isPending,
    error: create.error ?? openDemo.error ?? openOwn.error,
  };
}
