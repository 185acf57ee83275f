// The pictures of a sheet with their files, ready to print; one whose file is gone stays, without it.
import type { MarkedPoint } from '../../app/charts/picture-points.ts';
import type { PicturesOnPaper } from '../../app/papers/marked-pictures.ts';
import type { SavedPicture } from '../../app/specs/specs.contract.ts';
import { swappedSides } from '../../app/specs/swapped-sides.ts';
import { storageErrorOf } from '../database/errors.ts';
import { readJpeg } from '../photos/photos.service.ts';

type Point = SavedPicture['points'][number];

export function picturesOnPaper(
  shopFile: string,
  pictures: readonly SavedPicture[],
  mark: (point: Point) => Pick<MarkedPoint, 'figure' | 'mark'>,
): PicturesOnPaper {
  return {
    pictures: pictures.map(({ title, sha256, width, height, points }) => ({
      ...{ title, width, height, jpegBase64: jpegOrNull(shopFile, sha256) },
      points: points.map((point) => {
        const { label, x_permille, y_permille } = point;
        return { label, x_permille, y_permille, ...mark(point) };
      }),
    })),
    sides: swappedSides(pictures),
  };
}

function jpegOrNull(shopFile: string, sha256: string): string | null {
  try {
    return readJpeg(shopFile, sha256);
  } catch (thrown) {
    if (!storageErrorOf(thrown)) throw thrown;
    return null;
  }
}
