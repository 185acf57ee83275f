// A gauge's line heard in this window: how it stands, and its readings as they come.
import { useEffect, useState } from 'react';
import type { LineNews } from '../../app/indicators/line-news.ts';
import { call } from './client.ts';
import { transport } from './transport.ts';

/**
 * Opens the line and hands every piece of news to `hear`, which must stay the same between renderings; null hears
 * nothing. The line stays open when the screen goes, for the next one.
 */
export function useGaugeLine(lineId: number | null, hear: (news: LineNews) => void): Error | null {
  const [failed, setFailed] = useState<{ readonly lineId: number; readonly error: Error } | null>(null);
  useEffect(() => {
    if (lineId === null) return;
    const stopNews = transport.subscribe('gauge', (news) => {
      if (news.lineId === lineId) hear(news);
    });
    const open = () => {
      call('indicators.hearLine', { lineId })
        .then(() => setFailed(null))
        .catch((error: Error) => setFailed({ lineId, error }));
    };
    open();
    // Also after the book itself was started again: its lines are closed then.
    const stopChanges = transport.subscribe('changed', open);
    return () => {
      stopNews();
      stopChanges();
    };
  }, [lineId, hear]);
  return failed?.lineId === lineId ? failed.error : null;
}
