// The pictures of the KX3 sheet: drawings of our own, with the ports of its pump face and its case, and the balls of its valve body.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Picture } from '../../../app/specs/spec-sheet.ts';
import type { Caller } from './kx3-job.ts';

type Place = readonly [x: number, y: number];

/** Places are in the drawing's own points, of which there are 720 × 540. */
const port = (label: string, [x, y]: Place, checkName: string | null, note = ''): Picture['points'][number] => ({
  ...{ label, note, checkName, listName: null, lineWords: null },
  x_permille: Math.round((1000 * x) / 720),
  y_permille: Math.round((1000 * y) / 540),
});

const ball = (label: string, place: Place): Picture['points'][number] => ({
  ...port(label, place, null),
  listName: 'Valve body',
  lineWords: `Ball ${label}`,
});

const drawings = [
  {
    title: 'Pump face',
    file: 'pump-face.jpg',
    points: [port('A', [208, 280], 'Port A, Forward'), port('B', [512, 280], 'Port B, Direct')],
  },
  {
    title: 'Case',
    file: 'case-circuits.jpg',
    points: [
      port('C1', [220, 190], 'Port B, Direct'),
      port('C2', [500, 190], 'Port A, Forward'),
      port('C3', [200, 360], 'Port C3, Low/reverse'),
      port('C4', [560, 350], 'Port C4, servo apply'),
      port('C5', [360, 130], null, 'servo release'),
      port('C6', [430, 320], null, 'lube: flows, no clutch'),
    ],
  },
  {
    title: 'Valve body',
    file: 'valve-body.jpg',
    points: [
      ball('1', [150, 150]),
      ball('2', [420, 215]),
      ball('3', [580, 240]),
      ball('4', [150, 330]),
      ball('5', [280, 395]),
      port('6', [460, 380], null, 'stays without a ball'),
      port('7', [560, 320], null, 'stays without a ball'),
    ],
  },
] as const;

/** Keeps the files, and answers the pictures for the sheet. Built, they lie beside the bundle under the same name. */
export async function keepKx3Pictures(call: Caller, by: number): Promise<Picture[]> {
  const pictures: Picture[] = [];
  for (const { title, file, points } of drawings) {
    const jpegBase64 = readFileSync(join(import.meta.dirname, 'pictures', file)).toString('base64');
    pictures.push({ title, ...(await call('specs.keepPicture', { of: { jpegBase64 }, by })), points: [...points] });
  }
  return pictures;
}
