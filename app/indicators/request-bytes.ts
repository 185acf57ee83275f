// What a gauge is asked with, typed as text: "?", "OUT1\r", "\x05".
import { accept, type Result, refuse } from '../base/result.ts';

const named: Readonly<Record<string, number>> = { r: 0x0d, n: 0x0a, t: 0x09, '\\': 0x5c };

/** The bytes of a request; `\r`, `\n`, `\t`, `\\` and `\x05` stand for bytes that cannot be typed. Empty asks nothing. */
export function requestBytes(text: string): Result<readonly number[]> {
  const bytes: number[] = [];
  for (const [part, name, hex] of text.matchAll(/\\(?:([rnt\\])|x([0-9a-f]{2}))|[\s\S]/gi)) {
    if (hex !== undefined) bytes.push(Number(`0x${hex}`));
    else if (name !== undefined) bytes.push(named[name.toLowerCase()] ?? 0);
    else if (part === '\\' || !/^[ -~]$/.test(part)) {
      return refuse('request', `“${text}”: write \\r, \\n, \\t, \\\\ or \\x05 for what cannot be typed.`);
    } else bytes.push(part.charCodeAt(0));
  }
  return accept(bytes);
}
