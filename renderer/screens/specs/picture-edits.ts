// The acts on the pictures of a typed sheet. Each gives a new sheet.
import type { Picture } from '../../../app/specs/spec-sheet.ts';
import { replaced, without } from './sheet-edits.ts';
import type { TypedPicture, TypedPoint } from './typed-pictures.ts';
import type { TypedSheet } from './typed-sheet.ts';

export type KeptFile = Pick<Picture, 'sha256' | 'width' | 'height'>;

export function addPicture(sheet: TypedSheet, title: string, file: KeptFile): TypedSheet {
  const picture: TypedPicture = { key: sheet.lastKey + 1, title, ...file, points: [] };
  return { ...sheet, pictures: [...sheet.pictures, picture], lastKey: picture.key };
}

export function changePicture(sheet: TypedSheet, picture: TypedPicture): TypedSheet {
  return { ...sheet, pictures: replaced(sheet.pictures, picture) };
}

/** One more point at a place of the picture, labelled as the next after the last. */
export function addPoint(
  sheet: TypedSheet,
  picture: TypedPicture,
  place: Pick<TypedPoint, 'x_permille' | 'y_permille'>,
): TypedSheet {
  const point: TypedPoint = {
    key: sheet.lastKey + 1,
    label: labelAfter(picture.points.at(-1)?.label ?? ''),
    note: '',
    ...place,
    namesKey: null,
  };
  return { ...changePicture(sheet, { ...picture, points: [...picture.points, point] }), lastKey: point.key };
}

/** "C2" after "C1", "B" after "A"; "1" where nothing goes before. */
export function labelAfter(label: string): string {
  const number = /^(.*?)(\d{1,6})$/.exec(label);
  if (number) return `${number[1]}${Number(number[2]) + 1}`;
  if (/^[A-Ya-y]$/.test(label)) return String.fromCharCode(label.charCodeAt(0) + 1);
  return label === '' ? '1' : `${label} 2`;
}

export function changePoint(sheet: TypedSheet, picture: TypedPicture, point: TypedPoint): TypedSheet {
  return changePicture(sheet, { ...picture, points: replaced(picture.points, point) });
}

export function removePoint(sheet: TypedSheet, picture: TypedPicture, key: number): TypedSheet {
  return changePicture(sheet, { ...picture, points: without(picture.points, key) });
}

/** The point farther along by thousandths of the picture, never off it. */
export function movedBy(point: TypedPoint, across: number, down: number): TypedPoint {
  return {
    ...point,
    x_permille: onPicture(point.x_permille + across),
    y_permille: onPicture(point.y_permille + down),
  };
}

/** Whole thousandths from 0 to 1000. */
export function onPicture(permille: number): number {
  return Math.min(1000, Math.max(0, Math.round(permille)));
}
