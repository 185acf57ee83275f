// Bytes of a gauge's line, cut into frames: lines of plain text, however the bytes were split on their way.

/** A frame is one reading; no indicator needs more. It also bounds what matching a frame can cost. */
export const longestFrame_bytes = 64;

const [endOfText, lineFeed, carriageReturn, startOfText, tab] = [0x03, 0x0a, 0x0d, 0x02, 0x09];

/** What came since the last end of a frame. */
export type Pending = {
  readonly text: string;
  /** Holds a byte that is no text, or more of them than a frame may have. */
  readonly isSpoilt: boolean;
};

export const nothingPending: Pending = { text: '', isSpoilt: false };

export type CutFrames = { readonly pending: Pending; readonly frames: readonly string[]; readonly spoilt: number };

/**
 * The frames that are complete with these bytes. CR, LF and ETX each end a frame, STX begins one; an empty frame is
 * none. A frame with a byte outside printable ASCII, or longer than `longestFrame_bytes`, is counted as spoilt whole.
 */
export function cutFrames(before: Pending, bytes: Iterable<number>): CutFrames {
  let { text, isSpoilt } = before;
  let spoilt = 0;
  const frames: string[] = [];
  const end = () => {
    if (isSpoilt) spoilt += 1;
    else if (text.trim() !== '') frames.push(text.trim());
    text = '';
    isSpoilt = false;
  };
  for (const byte of bytes) {
    if (byte === carriageReturn || byte === lineFeed || byte === endOfText) end();
    else if (byte === startOfText) {
      // What stands before a beginning has lost its own end.
      isSpoilt ||= text.trim() !== '';
      end();
    } else if (byte > 0x7e || (byte < 0x20 && byte !== tab) || text.length >= longestFrame_bytes) isSpoilt = true;
    else text += String.fromCharCode(byte);
  }
  return { pending: { text, isSpoilt }, frames, spoilt };
}
