// The shape of a verdict at the size of the text it stands before; its word always follows.
import { type Verdict, verdictMark } from '../../app/charts/verdict-mark.ts';
import { ChartView } from './ChartView.tsx';

/** Hidden from a screen reader, which reads the word: in, tight by, loose by, too close to call, not read. */
export function VerdictMark({ verdict, size = 18 }: { readonly verdict: Verdict; readonly size?: number }) {
  return <ChartView chart={verdictMark(verdict, size)} />;
}
