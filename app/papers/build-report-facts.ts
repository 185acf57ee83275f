// What is known of a job when its build report is printed. Amounts are base units of their quantity, as they are kept.

import type { Limits, SureAmount } from '../charts/amounts.ts';
import type { Harmonic, SpotReading } from '../charts/clock.ts';
import type { PieceKind } from '../charts/stack.ts';
import type { KeptTraceFacts } from '../charts/trace.ts';
import type { Verdict } from '../charts/verdict-mark.ts';
import type { Finding } from '../jobs/findings.contract.ts';
import type { ListOfJob } from '../jobs/lists.contract.ts';
import type { DecimalMark } from '../quantities/format-amount.ts';
import type { LengthUnit } from '../quantities/units.ts';
import type { PicturesOnPaper } from './marked-pictures.ts';
import type { PaperSize, Picture } from './paper.ts';
import type { UnitOnPaper } from './unit-on-paper.ts';

/** The shop's copy says everything; the customer's leaves out what the shop says to itself. */
export type Copy = 'shop' | 'customer';

export type CheckFacts = {
  readonly group: string;
  readonly name: string;
  /** How it was read, as it stands behind the group's name: "by air". Empty where it goes without saying. */
  readonly method: string;
  /** A unit of app/quantities. Thou and mm are written in the shop's own length unit. */
  readonly unit: string;
  readonly limits: Limits;
  readonly target: number | null;
  readonly asFound: SureAmount | null;
  readonly final: (SureAmount & { readonly min: number; readonly max: number; readonly spots: number }) | null;
  readonly verdict: Verdict;
  /** How far outside, for what is out. */
  readonly by: number | null;
  /** The variant the reading decided for, where the check decides between some. */
  readonly variantName: string | null;
  readonly override: { readonly by: string; readonly reason: string } | null;
  readonly supersededCount: number;
  /** What was done before the final reading: "bushing changed". For the shop's copy. */
  readonly note: string;
};

export type MockUpFacts = {
  /** 0 is as found. */
  readonly number: number;
  /** "steel 2: 76.5 → 83.0", or empty where nothing changed. */
  readonly changed: string;
  readonly predicted: SureAmount | null;
  readonly read: SureAmount | null;
  /** What a miss beyond the ± was put down to. For the shop's copy. */
  readonly note: string;
};

/** The trace a reading was accepted from. For the shop's copy. */
export type TraceFacts = KeptTraceFacts & {
  readonly spot: number;
  readonly lineName: string;
  readonly isPractice: boolean;
};

export type PackFacts = {
  readonly name: string;
  /** As built, from the piston up; a selective ring is the last piece. */
  readonly pieces: ReadonlyArray<{
    readonly kind: PieceKind;
    readonly label: string;
    readonly tag?: string;
    readonly height_nm: number;
    readonly isNew: boolean;
  }>;
  /** The gap of the drum less the heights, null where the gap is not known. */
  readonly calculated_nm: number | null;
  /** The check that is this pack's clearance. */
  readonly check: CheckFacts | null;
  /** The final reading around the drum. */
  readonly spots: readonly SpotReading[];
  readonly harmonic: Pick<Harmonic, 'amplitude' | 'loosestAtDegrees'> | null;
  readonly mockUps: readonly MockUpFacts[];
  /** The setup card, one line each. For the shop's copy. */
  readonly setup: readonly string[];
  /** Of the readings that stand in the take it is judged by. */
  readonly traces: readonly TraceFacts[];
  /** What the clutch's figures come to, a sentence each. For the shop's copy. */
  readonly clutch: readonly string[];
};

export type BuildReportFacts = {
  readonly copy: Copy;
  readonly paper: PaperSize;
  readonly lengthUnit: LengthUnit;
  readonly decimalMark: DecimalMark;
  readonly shopName: string;
  readonly isDemo: boolean;
  readonly jobNumber: number;
  /** YYYY-MM-DD. */
  readonly printedOn: string;
  readonly customerName: string;
  readonly unit: UnitOnPaper;
  readonly complaint: string;
  /** "118,400 miles", or empty. */
  readonly distance: string;
  readonly builtBy: string;
  /** YYYY-MM-DD, first and last day of reading; null where nothing was read. */
  readonly builtFrom: string | null;
  readonly builtUntil: string | null;
  readonly specRevision: number;
  readonly checks: readonly CheckFacts[];
  readonly packs: readonly PackFacts[];
  /** What teardown found, in order. */
  readonly findings: readonly Finding[];
  /** What was counted, looked at and tried, in the order of the sheet. */
  readonly lists: readonly ListOfJob[];
  /** Readings put right after a misread. Their words are for the shop's copy. */
  readonly superseded: ReadonlyArray<{
    readonly check: string;
    readonly typed: string;
    readonly putRight: string;
    readonly reason: string;
    readonly by: string;
  }>;
  readonly warranty: string;
  /** To whom it went, on which day, and the warranty it left with in words; null while it is here. */
  readonly delivery: { readonly to: string; readonly on: string; readonly warranty: string } | null;
  /** What the shop wants the customer to mind: fluid, cooler, first look. */
  readonly cautions: readonly string[];
  /** The shop's own notes on the job. For the shop's copy. */
  readonly notes: readonly string[];
  /** Photos that a person chose for the report, oldest first. */
  readonly photos: readonly Picture[];
  /** The pictures of the sheet with what was read at their points. For the shop's copy. */
  readonly onPictures: PicturesOnPaper;
};
