// What a scanner typed, looked up and gone to: a part, a batch, a can, a plate, a ticket.
import { useNavigate } from '@tanstack/react-router';
import { useCallback } from 'react';
import type { Output } from '../../../app/contract/contract.ts';
import { call } from '../../rpc/client.ts';

/** Looks the code up and goes where it points. Answers false, staying where it is, when the book does not know it. */
export function useFindCode(): (code: string) => Promise<boolean> {
  const navigate = useNavigate();
  return useCallback(
    async (code) => {
      const meant = await call('stock.findCode', { code });
      if (meant === null) return false;
      await navigate(placeOf(meant));
      return true;
    },
    [navigate],
  );
}

function placeOf(meant: NonNullable<Output<'stock.findCode'>>) {
  switch (meant.kind) {
    case 'part':
    case 'batch':
      return { to: '/stock/parts/$partId', params: { partId: String(meant.partId) } } as const;
    case 'can':
      return {
        to: '/stock/plates/$outline',
        params: { outline: meant.outline },
        search: { can: meant.canId },
      } as const;
    case 'plate':
      return {
        to: '/stock/plates/$outline',
        params: { outline: meant.outline },
        search: { plate: meant.pieceId },
      } as const;
    case 'job':
      return { to: '/jobs/$jobId', params: { jobId: String(meant.jobId) } } as const;
  }
}
