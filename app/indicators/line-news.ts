// What main tells the screens about an open line, many times a second and without touching the shop file.

/**
 * `open`: readings come. `silent`: it is open and nothing comes. `garbled`: something comes that is no reading.
 * `away`: the port is gone. `taken`: somebody else has it. `forbidden`: this account may not open it.
 */
export type LineStanding = 'opening' | 'open' | 'silent' | 'garbled' | 'away' | 'taken' | 'forbidden' | 'closed';

export type LineNews = {
  readonly lineId: number;
  readonly standing: LineStanding;
  /** New since the last news, oldest first: the time on the line's own clock, and nanometres. */
  readonly samples: readonly (readonly [at_ms: number, value_nm: number])[];
  /** Since it was opened. */
  readonly readings: number;
  readonly garbled: number;
  /** The newest whole frame as it came. */
  readonly lastFrame: string;
};

/** One sentence about a line that is not giving readings; null while it is. */
export function standingSentence({ standing, lastFrame }: Pick<LineNews, 'standing' | 'lastFrame'>): string | null {
  switch (standing) {
    case 'open':
      return null;
    case 'opening':
      return 'The gauge’s line is being opened.';
    case 'silent':
      return 'The gauge says nothing: is it switched on, and is the request right?';
    case 'garbled':
      return lastFrame === ''
        ? 'What comes from the gauge is no text: check the speed and the bits of the line.'
        : `“${lastFrame}” is not what a reading of this line looks like.`;
    case 'away':
      return 'The gauge’s line is gone: plug it in again, and it goes on by itself.';
    case 'taken':
      return 'Another program has the gauge’s line: close it there, and it goes on here by itself.';
    case 'forbidden':
      return 'This account may not open the gauge’s line: it needs the right to use serial ports.';
    case 'closed':
      return 'The gauge’s line is closed.';
  }
}
