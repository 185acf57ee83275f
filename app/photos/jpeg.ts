// A photo as it is kept: a whole JPEG without anything written into it but the picture.
import { accept, type Result, refuse } from '../base/result.ts';

export type PlainJpeg = {
  /** The picture alone: no place, no camera, no remarks. */
  readonly bytes: Uint8Array;
  readonly width: number;
  readonly height: number;
};

const largestSide = 20_000;

/**
 * The same picture without its application and comment segments, which hold the place, the camera and a thumbnail;
 * only the two that say how the colours are coded stay (APP0 JFIF and APP14 Adobe). Nothing is decoded or changed
 * (ITU-T T.81 annex B). Refuses what is no JPEG, what is cut off, and absurd sizes.
 */
export function plainJpeg(bytes: Uint8Array): Result<PlainJpeg> {
  const byte = (at: number) => bytes[at] ?? -1;
  const word = (at: number) => byte(at) * 256 + byte(at + 1);
  if (word(0) !== 0xffd8) return refuse('not-a-photo', 'This is not a JPEG picture.');
  const cutOff = refuse('cut-off', 'This picture is cut off: part of it is missing.');
  const kept: Uint8Array[] = [bytes.subarray(0, 2)];
  let size: { width: number; height: number } | undefined;
  let at = 2;
  while (at < bytes.length) {
    // A marker may be preceded by any number of fill bytes.
    if (byte(at) !== 0xff) return refuse('broken-photo', 'This picture is damaged.');
    while (byte(at + 1) === 0xff) at += 1;
    const marker = byte(at + 1);
    const length = word(at + 2);
    if (at + 4 > bytes.length || length < 2 || at + 2 + length > bytes.length) return cutOff;
    if (isFrame(marker)) size = { height: word(at + 5), width: word(at + 7) };
    if (!isRemark(marker)) kept.push(bytes.subarray(at, at + 2 + length));
    at += 2 + length;
    if (marker === startOfScan) break;
  }
  const end = bytes.lastIndexOf(0xd9);
  if (end < at || byte(end - 1) !== 0xff) return cutOff;
  if (!size) return refuse('broken-photo', 'This picture is damaged.');
  const { width, height } = size;
  if (width < 1 || height < 1 || width > largestSide || height > largestSide) {
    return refuse('photo-size', `This picture is ${width} × ${height} points: it cannot be shown.`);
  }
  kept.push(bytes.subarray(at, end + 1));
  return accept({ bytes: joined(kept), width, height });
}

const startOfScan = 0xda;

/** SOF0 to SOF15 but the three numbers among them that mean something else. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
}

function isRemark(marker: number): boolean {
  const isApplication = marker >= 0xe0 && marker <= 0xef;
  return marker === 0xfe || (isApplication && marker !== 0xe0 && marker !== 0xee);
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
