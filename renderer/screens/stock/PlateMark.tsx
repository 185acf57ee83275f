// The square of a plate at the size of the text it stands before; its word always follows.
import { type PlateMark as Mark, plateMark } from '../../../app/charts/plate-mark.ts';
import { ChartView } from '../../charts/ChartView.tsx';

export function PlateMark({ mark }: { mark: Mark }) {
  return <ChartView chart={plateMark(mark, 14)} />;
}
