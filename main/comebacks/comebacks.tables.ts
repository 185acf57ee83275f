// The rows of what came back, of whom to call, and of the shelf of builds as they were found to be.
import type { Generated } from 'kysely';
import type { Cause, Certainty, Covering, Outcome } from '../../app/comebacks/causes.ts';
import type { Distance } from '../../app/jobs/distance.contract.ts';
import type { Verdict } from '../../app/readings/readings.contract.ts';

interface ComebackRow {
  comeback_id: Generated<number>;
  job_id: number;
  built_job_id: number;
  logged_at: string;
  logged_by: number;
}

interface ComebackCardRow {
  comeback_card_id: Generated<number>;
  comeback_id: number;
  came_back_on: string;
  customer_says: string;
  distance_amount: number | null;
  distance_unit: Distance['unit'] | null;
  outcome: Outcome;
  covered: Covering;
  covered_note: string;
  cost_cents: number | null;
  note: string;
  reason: string;
  written_at: string;
  written_by: number;
}

interface ComebackCauseRow {
  comeback_cause_id: Generated<number>;
  comeback_id: number;
  cause: Cause;
  pack_id: number | null;
  certainty: Certainty | 'taken back';
  note: string;
  written_at: string;
  written_by: number;
}

interface UnitToCallRow {
  unit_to_call_id: Generated<number>;
  job_id: number;
  shares: 'batch' | 'plate' | 'gauge' | 'finding' | 'other';
  what: string;
  what_to_check: string;
  reason: string;
  added_at: string;
  added_by: number;
}

interface UnitCalledRow {
  unit_called_id: Generated<number>;
  unit_to_call_id: number;
  came_of_it: 'reached' | 'not reached' | 'comes in' | 'looked at' | 'taken off';
  note: string;
  called_at: string;
  called_by: number;
}

interface AsBuiltRow {
  job_id: number;
  /** Which way of reckoning filled it; another one is done anew. */
  reckoning: number;
  builder: number | null;
}

interface AsBuiltCheckRow {
  job_id: number;
  check_id: number;
  take_id: number;
  amount: number | null;
  lowest: number | null;
  highest: number | null;
  expanded: number | null;
  verdict: Verdict['word'];
  outside_by: number | null;
}

interface AsBuiltPackRow {
  job_id: number;
  pack_id: number;
  mock_ups: number;
  reused_plates: number;
}

interface BuildAsDelivered {
  job_id: number;
  number: number;
  customer_id: number;
  unit_id: number;
  revision_id: number;
  family_id: number;
  delivered_on: string;
  distance_amount: number | null;
  distance_unit: Distance['unit'] | null;
  in_service_on: string | null;
  months: number | null;
}

export interface ComebacksTables {
  comebacks: ComebackRow;
  comeback_cards: ComebackCardRow;
  comeback_causes: ComebackCauseRow;
  units_to_call: UnitToCallRow;
  units_called: UnitCalledRow;
  as_built: AsBuiltRow;
  as_built_checks: AsBuiltCheckRow;
  as_built_packs: AsBuiltPackRow;
  builds_as_delivered: BuildAsDelivered;
  comebacks_as_known: ComebackRow & ComebackCardRow;
  causes_as_known: ComebackCauseRow;
}
