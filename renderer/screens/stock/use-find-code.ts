// What a scanner typed, looked up and gone to: a part, a batch, a can, a plate, a ticket.
import { useNavigate } from '@tanstack/react-router';
import { useCallback } from 'react';
import { addressOfPlace } from '../../frame/place-address.ts';
import { call } from '../../rpc/client.ts';

/** Looks the code up and goes where it points. Answers false, staying where it is, when the book does not know it. */
export function useFindCode(): (code: string) => Promise<boolean> {
  const navigate = useNavigate();
  return useCallback(
    async (code) => {
      const meant = await call('stock.findCode', { code });
      if (meant === null) return false;
      await navigate(addressOfPlace(meant.kind === 'batch' ? { kind: 'part', partId: meant.partId } : meant));
      return true;
    },
    [navigate],
  );
}
