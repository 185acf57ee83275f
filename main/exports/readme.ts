// The page that says what each file of an exported folder is.
import type { LengthUnit } from '../../app/quantities/units.ts';

export type FileInFolder = { readonly name: string; readonly says: string };

export function readme(folder: {
  title: string;
  lengthUnit: LengthUnit;
  delimiter: string;
  files: readonly FileInFolder[];
  /** What could not be taken along. */
  troubles: readonly string[];
}): string {
  const between = folder.delimiter === ';' ? 'semicolons' : 'commas';
  const width = Math.max(...folder.files.map(({ name }) => name.length));
  return [
    folder.title,
    '',
    ...folder.files.map(({ name, says }) => `${name.padEnd(width)}  ${says}`),
    '',
    `The lists (.csv) are text in UTF-8 with ${between} between the columns; any spreadsheet opens them. Text that a`,
    'spreadsheet would take for a formula has an apostrophe in front. Times are UTC.',
    `The unit stands in the name of a column: ${folder.lengthUnit}, _nm millionths of a millimetre, _cents hundredths of the money.`,
    'Columns called amount are whole base units of their quantity: length in nm, pressure in Pa, torque in mN·m, volume',
    'in µL, angle in degrees, counts as they are. 0 is no and 1 is yes. A list with nothing in it has no file.',
    ...(folder.troubles.length === 0 ? [] : ['', 'Not in this folder:', ...folder.troubles.map((each) => `- ${each}`)]),
    '',
  ].join('\r\n');
}
