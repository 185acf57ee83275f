// The schema's history in order. A migration is frozen once it has landed; the next change is the next number.
import type { Migration } from 'kysely/migration';
import * as oneUnit from './0001-one-unit.ts';
import * as whatATakeLeansOn from './0002-what-a-take-leans-on.ts';
import * as stock from './0003-stock.ts';
import * as estimates from './0004-estimates.ts';
import * as doorToDoor from './0005-door-to-door.ts';
import * as photos from './0006-photos.ts';
import * as gauges from './0007-gauges.ts';
import * as gaugeLines from './0008-gauge-lines.ts';
import * as lists from './0009-lists.ts';
import * as findings from './0010-findings.ts';
import * as delivery from './0011-delivery.ts';
import * as pictures from './0012-pictures.ts';
import * as clutchFigures from './0013-clutch-figures.ts';
import * as comebacks from './0014-comebacks.ts';
import * as gaugeOfALine from './0015-gauge-of-a-line.ts';
import * as lookedUp from './0016-looked-up.ts';

export { applicationId } from './0001-one-unit.ts';

export const migrations: Record<string, Migration> = {
  '0001-one-unit': oneUnit,
  '0002-what-a-take-leans-on': whatATakeLeansOn,
  '0003-stock': stock,
  '0004-estimates': estimates,
  '0005-door-to-door': doorToDoor,
  '0006-photos': photos,
  '0007-gauges': gauges,
  '0008-gauge-lines': gaugeLines,
  '0009-lists': lists,
  '0010-findings': findings,
  '0011-delivery': delivery,
  '0012-pictures': pictures,
  '0013-clutch-figures': clutchFigures,
  '0014-comebacks': comebacks,
  '0015-gauge-of-a-line': gaugeOfALine,
  '0016-looked-up': lookedUp,
};
