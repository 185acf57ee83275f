// The rows of the indicators room: how lines are set, and the traces kept with readings, which are append-only.
import type { Generated } from 'kysely';
import type { PracticeKind } from '../../app/indicators/simulated-plate.ts';

export interface GaugeLinesTable {
  gauge_line_id: Generated<number>;
  name: string;
  source: 'serial' | 'practice';
  path: string | null;
  baud_rate: number | null;
  data_bits: 7 | 8 | null;
  parity: 'none' | 'even' | 'odd' | null;
  stop_bits: 1 | 2 | null;
  request: string | null;
  practice: PracticeKind | null;
  pattern: string;
  unit: 'mm' | 'in';
  is_reversed: number;
  step_nm: number;
  still_within_steps: number;
  still_for_ms: number;
  every_ms: number;
  is_retired: number;
}

export interface ReadingTracesTable {
  reading_id: number;
  line_name: string;
  is_practice: number;
  /** As app/indicators/kept-trace.ts packs it. */
  samples: Uint8Array;
  heard: number;
  rest_nm: number | null;
  pressed_nm: number | null;
  air_nm: number | null;
}

export interface LineGaugesTable {
  gauge_line_id: number;
  gauge_id: number;
}

export type IndicatorsTables = {
  gauge_lines: GaugeLinesTable;
  line_gauges: LineGaugesTable;
  reading_traces: ReadingTracesTable;
};
