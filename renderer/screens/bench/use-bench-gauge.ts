// The gauge on a line that this bench reads, where one was chosen and is still used.
import type { GaugeLine } from '../../../app/indicators/indicators.contract.ts';
import { useBenchHabits } from '../../frame/bench-habits.ts';
import { useRead } from '../../rpc/use-read.ts';

export function useBenchGauge(): GaugeLine | null {
  const { lineId } = useBenchHabits().habits;
  const lines = useRead('indicators.listLines', lineId === null ? null : {});
  return lines.data?.find((line) => line.lineId === lineId && !line.isRetired) ?? null;
}
