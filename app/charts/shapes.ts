// What a chart is made of: a short closed list of shapes whose paint is named by its role, so that the screen and the
// paper can draw the same list in their own colours.

/** Where a chart will be seen. It decides the text sizes a layout has to make room for. */
export type Medium = 'screen' | 'paper';

/** Pixels on the screen, points on paper: the four sizes of each, less the one no chart uses. */
export const textSizes = {
  screen: { small: 14, body: 18, say: 32 },
  paper: { small: 8.5, body: 10, say: 15 },
} as const;

export type TextSize = keyof (typeof textSizes)['screen'];

/** What a colour is for. Each painter owns the colour. */
export const paintRoles = [
  'ink',
  'quiet',
  'line',
  'mark',
  'act',
  'in',
  'out',
  'close',
  'steel',
  'friction',
  'metal',
  'ground',
  'face',
  'well',
] as const;
export type PaintRole = (typeof paintRoles)[number];

/** A hatch tells a kind apart without colour. Lines lean by `angle` degrees from upright; dots stand in staggered rows. */
export const hatches = {
  steel: { kind: 'lines', angle: 45, spacing: 6, thickness: 0.5, role: 'quiet' },
  backing: { kind: 'lines', angle: -45, spacing: 8, thickness: 0.5, role: 'quiet' },
  guard: { kind: 'lines', angle: 45, spacing: 5, thickness: 0.8, role: 'mark' },
  friction: { kind: 'dots', angle: 0, spacing: 3, thickness: 1.8, role: 'quiet' },
} as const;
export type Hatch = keyof typeof hatches;

/** Hatches are finer on paper. */
export const hatchScale: Record<Medium, number> = { screen: 1, paper: 0.75 };

/** What a shape stands for, so that a reader of the list can find it again. */
export type Depicts =
  | 'reading'
  | 'limit'
  | 'target'
  | 'guard'
  | 'now'
  | 'predicted'
  | 'as found'
  | 'fit'
  | 'piece'
  | 'clearance';

type Paint = {
  readonly depicts?: Depicts;
  readonly fill?: PaintRole;
  readonly stroke?: PaintRole;
  readonly strokeWidth?: number;
  readonly dash?: readonly number[];
};

export type Line = Paint & {
  readonly kind: 'line';
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
};

/** `outline` is in the path language that SVG and PDF painters share; a hole is a second loop, filled by even-odd. */
export type Path = Paint & { readonly kind: 'path'; readonly outline: string };

export type Rect = Paint & {
  readonly kind: 'rect';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly hatch?: Hatch;
};

export type Circle = Paint & {
  readonly kind: 'circle';
  readonly x: number;
  readonly y: number;
  readonly radius: number;
};

/** One line of text standing on its baseline at `y`. */
export type Text = {
  readonly kind: 'text';
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly role: PaintRole;
  readonly size: TextSize;
  readonly weight: 'regular' | 'semibold';
  readonly anchor: 'start' | 'middle' | 'end';
  readonly typeface: 'sans' | 'mono';
  /** Laid round the letters where they cross a drawing. */
  readonly halo?: PaintRole;
};

export type Shape = Line | Path | Rect | Circle | Text;

/** Shapes in drawing order, in units of one pixel or one point, with the sentence that says the same in words. */
export type Chart = {
  readonly medium: Medium;
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly shapes: readonly Shape[];
};

export function line(x1: number, y1: number, x2: number, y2: number, paint: Paint): Line {
  return { kind: 'line', x1, y1, x2, y2, ...paint };
}

export function path(outline: string, paint: Paint): Path {
  return { kind: 'path', outline, ...paint };
}

export function rect(x: number, y: number, width: number, height: number, paint: Paint & Pick<Rect, 'hatch'>): Rect {
  return { kind: 'rect', x, y, width, height, ...paint };
}

export function circle(x: number, y: number, radius: number, paint: Paint): Circle {
  return { kind: 'circle', x, y, radius, ...paint };
}

export type TextStyle = Partial<Omit<Text, 'kind' | 'x' | 'y' | 'text'>>;

export function text(x: number, y: number, words: string, style: TextStyle = {}): Text {
  return {
    kind: 'text',
    x,
    y,
    text: words,
    role: 'ink',
    size: 'small',
    weight: 'regular',
    anchor: 'start',
    typeface: 'sans',
    ...style,
  };
}

/** To a hundredth of a pixel or a point, so that a drawing is the same text everywhere. */
export function round(value: number): number {
  return Math.round(value * 100) / 100;
}
