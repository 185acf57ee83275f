// Digital gauges on a serial line: how each line is set, and hearing it. What it says comes as news, not as an answer.
import { z } from 'zod';
import { done, id, length_nm, line, nothing, requiredLine } from '../contract/fields.ts';
import { read, write } from '../contract/method.ts';
import { practiceKinds } from './simulated-plate.ts';

export const parities = ['none', 'even', 'odd'] as const;
export const lineStandings = ['opening', 'open', 'silent', 'garbled', 'away', 'taken', 'forbidden', 'closed'] as const;

/** What a reading is, and when it counts as still. */
const says = {
  name: requiredLine,
  /** Pieces: {number}, {unit}, {digits}, {letters}, {any}; all else stands for itself. */
  pattern: requiredLine,
  unit: z.enum(['mm', 'in']),
  /** It counts down when the plate goes up. */
  isReversed: z.boolean(),
  /** One count of its display. */
  step_nm: length_nm.positive().max(2_540_000),
  /** Still: no more counts apart than this, for so long. */
  stillWithin_steps: z.int().min(1).max(200),
  stillFor_ms: z.int().min(200).max(5000),
  /** How often it is asked, or how often the practice gauge speaks. */
  every_ms: z.int().min(10).max(5000),
  /** Which gauge of the register speaks here; takes read over the line name it. */
  gaugeId: id.nullable().default(null),
};

export const lineSettings = z.discriminatedUnion('source', [
  z.strictObject({
    source: z.literal('serial'),
    ...says,
    path: requiredLine,
    baudRate: z.int().min(300).max(1_000_000),
    dataBits: z.union([z.literal(7), z.literal(8)]),
    parity: z.enum(parities),
    stopBits: z.union([z.literal(1), z.literal(2)]),
    /** With \r, \n, \x05 for what cannot be typed; empty where it speaks by itself. */
    request: line,
  }),
  z.strictObject({ source: z.literal('practice'), ...says, practice: z.enum(practiceKinds) }),
]);

export const gaugeLine = z.intersection(lineSettings, z.object({ lineId: id, isRetired: z.boolean() }));

/** Times count from the beginning of the trace. */
const samples = z.array(z.tuple([z.int().nonnegative(), length_nm]));

/** The trace that is kept with a reading. */
export const trace = z.strictObject({
  lineName: requiredLine,
  /** Made up by the practice gauge. */
  isPractice: z.boolean(),
  samples: samples.min(2).max(400),
  /** How many readings it was before it was thinned. */
  heard: z.int().positive(),
  rest_nm: length_nm.nullable(),
  pressed_nm: length_nm.nullable(),
  air_nm: length_nm.nullable(),
});

/** What is sent with a reading: the line says by itself what it is called and whether it is for practice. */
export const heardTrace = trace.omit({ lineName: true, isPractice: true }).extend({ lineId: id });

export const indicatorsContract = {
  'indicators.listLines': read('the gauges on a line, and the practice gauges', nothing, z.array(gaugeLine)),
  'indicators.listPorts': read(
    'the serial ports of this machine now',
    nothing,
    z.array(z.strictObject({ path: z.string(), says: z.string() })),
  ),
  'indicators.addLine': write('set a gauge’s line', lineSettings, z.strictObject({ lineId: id })),
  'indicators.changeLine': write(
    'set a gauge’s line otherwise',
    z.strictObject({ lineId: id, settings: lineSettings }),
    done,
  ),
  'indicators.retireLine': write(
    'a line is no longer used; traces that came over it stay',
    z.strictObject({ lineId: id }),
    done,
  ),
  'indicators.listTraces': read(
    'the traces kept with the readings of a take',
    z.strictObject({ takeId: id }),
    z.array(trace.extend({ readingId: id })),
  ),
  'indicators.hearLine': read(
    'open a line unless it is open, so that its readings come as news',
    z.strictObject({ lineId: id }),
    z.strictObject({ standing: z.enum(lineStandings) }),
  ),
  'indicators.leaveLine': read('close a line', z.strictObject({ lineId: id }), done),
} as const;

export type LineSettings = z.infer<typeof lineSettings>;
export type GaugeLine = z.infer<typeof gaugeLine>;
export type Trace = z.infer<typeof trace>;
export type KeptTrace = Trace & { readonly readingId: number };
export type HeardTrace = z.infer<typeof heardTrace>;
