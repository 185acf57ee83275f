// A photo as it comes from a phone, made ready to keep: upright, no larger than needed, a JPEG, and a small one beside it.

export type ReadyPhoto = { readonly jpegBase64: string; readonly smallBase64: string };

const longestSide = 2000;
const smallLongestSide = 400;
const quality = 0.85;

/** Throws an error with one plain sentence where the picture cannot be read. */
export async function shrinkPhoto(picture: Blob, name: string): Promise<ReadyPhoto> {
  const bitmap = await createImageBitmap(picture, { imageOrientation: 'from-image' }).catch(() => {
    throw new Error(`${name} cannot be read as a picture: save it as JPEG or PNG.`);
  });
  try {
    return {
      jpegBase64: await asJpeg(bitmap, longestSide),
      smallBase64: await asJpeg(bitmap, smallLongestSide),
    };
  } finally {
    bitmap.close();
  }
}

async function asJpeg(bitmap: ImageBitmap, longest: number): Promise<string> {
  const share = Math.min(1, longest / Math.max(bitmap.width, bitmap.height));
  const canvas = new OffscreenCanvas(
    Math.max(1, Math.round(bitmap.width * share)),
    Math.max(1, Math.round(bitmap.height * share)),
  );
  const context = canvas.getContext('2d');
  if (!context) throw new Error('This machine cannot draw pictures: restart Thoubook.');
  // What is see-through becomes white, not black.
  context.fillStyle = 'white';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  const jpeg = await canvas.convertToBlob({ type: 'image/jpeg', quality });
  return base64Of(new Uint8Array(await jpeg.arrayBuffer()));
}

function base64Of(bytes: Uint8Array): string {
  let letters = '';
  // In pieces: a call takes only so many arguments.
  for (let at = 0; at < bytes.length; at += 0x8000) letters += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  return btoa(letters);
}
