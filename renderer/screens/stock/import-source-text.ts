// The text of a file that is to be imported, as it comes from a disk or the clipboard.

export type SourceText = {
  /** Tells one taking from the next, also of the same file. */
  readonly key: string;
  readonly name: string;
  readonly text: string;
};

/** More than the book takes at once; said here, before so much text is sent. */
export const mostCharacters = 3_500_000;

/**
 * Text of bytes in UTF-8, in UTF-16 with its mark in front, or else in Windows-1252, which older spreadsheets write
 * and which has a letter for every byte.
 */
export function decodeText(bytes: Uint8Array<ArrayBuffer>): string {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (first === 0xfe && second === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
