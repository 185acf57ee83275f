// A gauge's line heard in this window: how it stands, and its readings as they come.
import { skipToken, useQuery } from '@tanstack/react-query';
import { useEffect } from 'react';
import type { LineNews } from '../../app/indicators/line-news.ts';
import { call } from './client.ts';
import { transport } from './transport.ts';

/**
 * Opens the line and hands every piece of news to `hear`, which must stay the same between renderings; null hears
 * nothing. The line stays open when the screen goes, for the next one.
 */
export function useGaugeLine(lineId: number | null, hear: (news: LineNews) => void): Error | null {
  useEffect(() => {
    if (lineId === null) return;
    return transport.subscribe('gauge', (news) => {
      if (news.lineId === lineId) hear(news);
    });
  }, [lineId, hear]);
  // Asked again with everything else: after the book itself was started again its lines are closed.
  const opened = useQuery({
    queryKey: ['indicators.hearLine', { lineId }],
    queryFn: lineId === null ? skipToken : () => call('indicators.hearLine', { lineId }),
    staleTime: 0,
  });
  return opened.error;
}
