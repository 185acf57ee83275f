import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainJpeg } from '../../app/photos/jpeg.ts';
import { greyJpeg, phoneJpeg } from './small-jpeg.ts';

describe('a photo is kept without anything but the picture', () => {
  test('place, camera and remarks are gone; the picture is the same to the last byte', () => {
    const plain = plainJpeg(phoneJpeg);
    expect(plain).toMatchObject({ ok: true, value: { width: 8, height: 6 } });
    if (!plain.ok) return;
    expect(Buffer.from(plain.value.bytes).equals(greyJpeg)).toBe(true);
    expect(Buffer.from(plain.value.bytes).toString('latin1')).not.toMatch(/GPS|Heron|Okoro/);
  });

  test('what follows the end of the picture is left out', () => {
    const plain = plainJpeg(Buffer.concat([greyJpeg, Buffer.from('hidden behind it')]));
    expect(plain.ok && Buffer.from(plain.value.bytes).equals(greyJpeg)).toBe(true);
  });

  test('no beginning of a picture passes for the whole of it', () => {
    for (let length = 0; length < greyJpeg.length; length += 1) {
      expect(plainJpeg(greyJpeg.subarray(0, length)).ok, `${length} bytes`).toBe(false);
    }
  });

  test('other files are refused in one sentence', () => {
    expect(plainJpeg(Buffer.from('%PDF-1.7'))).toMatchObject({ refusal: { message: 'This is not a JPEG picture.' } });
    expect(plainJpeg(greyJpeg.subarray(0, 60))).toMatchObject({
      refusal: { message: 'This picture is cut off: part of it is missing.' },
    });
  });

  test('whatever bytes come, the answer is a picture or a refusal', () => {
    const damaged = fc.array(fc.tuple(fc.nat(phoneJpeg.length - 1), fc.nat(255)), { maxLength: 8 }).map((changes) => {
      const bytes = Buffer.from(phoneJpeg);
      for (const [at, value] of changes) bytes[at] = value;
      return bytes;
    });
    fc.assert(
      fc.property(fc.oneof(damaged, fc.uint8Array({ maxLength: 80 })), (bytes) => {
        const plain = plainJpeg(bytes);
        if (!plain.ok) return plain.refusal.message.endsWith('.');
        return plain.value.width > 0 && plain.value.height > 0 && plain.value.bytes.length <= bytes.length;
      }),
      { numRuns: 2000 },
    );
  });
});
