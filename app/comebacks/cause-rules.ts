// Which facts on record speak for a cause, which against it, and what should be looked at now.
// Every rule here is common practice, no source. None of them decides anything.
import {
  always,
  batchCameBack,
  batchesAreQuiet,
  type Fact,
  foundAtTeardown,
  foundNow,
  hurt,
  hurtPacks,
  lies,
  liesAsUsual,
  lineStandsOut,
  linesAreGood,
  neverRead,
  noBatchKnown,
  noPlateMeasured,
  nothingStandsOut,
  notLookedAt,
  notReadAsFound,
  platesUsedAgain,
  readOtherwise,
} from './cause-facts.ts';
import type { Cause } from './causes.ts';

/** A fact, and why it matters or how to look. */
type Rule = readonly [fact: Fact, because: string];

export type CauseRules = {
  readonly speaksFor: readonly Rule[];
  readonly speaksAgainst: readonly Rule[];
  readonly lookNow: readonly Rule[];
};

const valveBody = /^valve body:/i;
const counts = /frictions|steels|wave plates|apply plates|backing plate|ring seated|slot \d/i;

export const causeRules: Readonly<Record<Cause, CauseRules>> = {
  'too tight': {
    speaksFor: [
      [lies('low', 'clearance'), 'A pack with little room drags while it is open.'],
      [lies('low', 'end play', 'bushing or ring'), 'Without room, parts carry load where none belongs.'],
      [readOtherwise('method', /feeler/, 'clearance'), 'A feeler can read more room than air does.'],
      [readOtherwise('setup', /dry plates/, 'clearance'), 'Linings are thicker once they are soaked.'],
      [foundAtTeardown(hurt, { places: ['middle'] }), 'The middle of a pack runs hottest when it drags.'],
    ],
    speaksAgainst: [[liesAsUsual('clearance', 'end play'), 'It had its room.']],
    lookNow: [
      [neverRead('clearance', 'end play'), 'How much room it had is not known.'],
      [notReadAsFound('clearance'), 'Read them before the packs come apart: less the wear, it is what was built.'],
      [noPlateMeasured, 'Measure every friction, and say its place: piston end, middle, ring end.'],
    ],
  },
  'too loose': {
    speaksFor: [
      [lies('high', 'clearance'), 'The piston travels farther before the pack bites.'],
      [lies('high', 'end play', 'travel'), 'Parts move before they hold.'],
      [readOtherwise('setup', /piston not stroked/, 'clearance'), 'A held-up piston reads tighter than it is.'],
      [foundAtTeardown(['loose']), 'It was found loose.'],
    ],
    speaksAgainst: [[liesAsUsual('clearance', 'end play', 'travel'), 'It had no more room than others.']],
    lookNow: [
      [neverRead('clearance', 'travel'), 'How much room it had is not known.'],
      [notReadAsFound('clearance', 'travel'), 'Read them before anything comes apart.'],
    ],
  },
  'leak in one circuit': {
    speaksFor: [
      [lies('high', 'leak-down'), 'This circuit lost more pressure when it was built.'],
      [foundNow('more', 'leak-down'), 'It loses more than it did.'],
      [lies('high', 'bushing or ring'), 'Oil escapes where a ring or a bushing has too much room.'],
      [foundAtTeardown(['leaking', 'cracked', 'scored'], { part: /seal|ring|piston|drum|land/i }), 'Oil gets past it.'],
      [hurtPacks('one'), 'One pack alone starves when its own circuit leaks.'],
    ],
    speaksAgainst: [
      [liesAsUsual('leak-down'), 'The circuits held when it was built.'],
      [hurtPacks('several'), 'One leaking circuit hurts one pack.'],
    ],
    lookNow: [
      [neverRead('leak-down'), 'Whether these held is not known.'],
      [notReadAsFound('leak-down'), 'Put air to each circuit before it comes apart.'],
      [
        notLookedAt(/seal|ring/i, 'No seal or ring is written down yet.'),
        'Look at every seal, ring and land of the pack.',
      ],
    ],
  },
  'low line pressure': {
    speaksFor: [
      [lies('low', 'line pressure'), 'Packs slip where pressure is low.'],
      [foundNow('less', 'line pressure'), 'It has fallen since it was built.'],
      [lineStandsOut(/pressure|pump faces/i), 'It sets or makes the pressure.'],
      [
        foundAtTeardown(['scored', 'worn', 'stuck', 'broken'], { part: /pump|pressure/i }),
        'The pump makes the pressure.',
      ],
      [hurtPacks('several'), 'Low pressure hurts more than one pack.'],
    ],
    speaksAgainst: [
      [liesAsUsual('line pressure'), 'Pressure was right when it was built.'],
      [hurtPacks('one'), 'Low pressure seldom hurts one pack alone.'],
    ],
    lookNow: [
      [neverRead('line pressure'), 'What pressure it left with is not known.'],
      [notReadAsFound('line pressure'), 'Read it in the vehicle, idle and full throttle, before it comes out.'],
      [
        notLookedAt(/pump/i, 'Nothing of the pump is written down yet.'),
        'Look at its faces, gears and pressure valve.',
      ],
    ],
  },
  'tie-up or valve body': {
    speaksFor: [
      [lineStandsOut(valveBody), 'The valve body decides what is on.'],
      [lineStandsOut(/shift|kickdown|: reverse/i), 'It did not shift as the others when it left.'],
      [
        foundAtTeardown(['stuck', 'broken', 'missing', 'scored'], { part: /valve|ball|spring|separator/i }),
        'It was found so.',
      ],
      [hurtPacks('several'), 'Two packs on at once hurt both.'],
    ],
    speaksAgainst: [[linesAreGood(valveBody, 'Valve body'), 'It was gone through line by line.']],
    lookNow: [
      [
        notLookedAt(/valve|ball|separator/i, 'Nothing of the valve body is written down yet.'),
        'Count the balls and move every valve before it is washed.',
      ],
    ],
  },
  converter: {
    speaksFor: [
      [lies('low', 'converter'), 'It may not have gone home.'],
      [lies('high', 'converter'), 'It may not have reached the pump.'],
      [lineStandsOut(/converter|stall/i), 'It differs from what other builds had.'],
      [
        foundAtTeardown(['worn', 'scored', 'cracked', 'broken', 'loose', 'burnt'], { part: /converter|hub|lock/i }),
        'It was found so.',
      ],
    ],
    speaksAgainst: [
      [liesAsUsual('converter'), 'It sat as others did.'],
      [linesAreGood(/converter|stall/i, 'Converter and stall'), 'Nothing was off when it left.'],
    ],
    lookNow: [
      [neverRead('converter'), 'How it sat is not known.'],
      [
        notLookedAt(/converter/i, 'Nothing of the converter is written down yet.'),
        'See what drains out of it, turn it by hand and look at its hub.',
      ],
    ],
  },
  'cooler or fluid': {
    speaksFor: [
      [lies('low', 'cooler flow'), 'Little flow is heat in every part.'],
      [foundNow('less', 'cooler flow'), 'The cooler has closed up since.'],
      [lineStandsOut(/cooler|fluid|flush/i), 'It differs from what other builds had.'],
      [
        foundAtTeardown([...hurt, 'leaking', 'broken'], { part: /cooler|fluid|filter|pan|magnet/i }),
        'It was found so.',
      ],
      [hurtPacks('several'), 'Heat from outside hurts more than one pack.'],
    ],
    speaksAgainst: [
      [liesAsUsual('cooler flow'), 'The cooler flowed as others did.'],
      [linesAreGood(/cooler|flush/i, 'Cooler'), 'It was seen to.'],
    ],
    lookNow: [
      [neverRead('cooler flow'), 'How much flowed is not known.'],
      [notReadAsFound('cooler flow'), 'Measure it before the cooler is flushed.'],
      [
        notLookedAt(/fluid|pan|filter/i, 'Nothing of the fluid or the pan is written down yet.'),
        'Keep some, and cut the filter open.',
      ],
    ],
  },
  'stack-up error': {
    speaksFor: [
      [lineStandsOut(counts), 'A count or an order was off or not answered.'],
      [readOtherwise('setup', /wave plate/, 'clearance'), 'The wave plate was not as the sheet means it.'],
      [lies('low', 'clearance'), 'One plate too many reads tight.'],
      [lies('high', 'clearance'), 'One plate too few reads loose.'],
      [
        foundAtTeardown(['missing', 'broken'], { part: /friction|steel|plate|ring|thrust|washer|bearing/i }),
        'It was found so.',
      ],
    ],
    speaksAgainst: [
      [linesAreGood(counts, 'Counts and order'), 'The plates were counted in.'],
      [liesAsUsual('clearance'), 'A plate too many or too few would show here.'],
    ],
    lookNow: [
      [always('Count the plates out, and lay them in order beside the sheet.'), 'Do it before any of them is cleaned.'],
    ],
  },
  material: {
    speaksFor: [
      [batchCameBack, 'Builds with it came back oftener.'],
      [platesUsedAgain, 'A plate that ran before may be bent or spotted.'],
      [foundNow('more', 'clearance'), 'So much wear in this time is much.'],
      [foundAtTeardown(['flaked', 'glazed', 'cracked', 'broken']), 'The part itself gave way.'],
    ],
    speaksAgainst: [[batchesAreQuiet, 'Others run it without trouble.']],
    lookNow: [
      [noBatchKnown, 'Look for the marks on boxes and plates.'],
      [noPlateMeasured, 'Measure what is left of every friction.'],
    ],
  },
  'use or setting': {
    speaksFor: [
      [lies('low', 'torque', 'travel'), 'A bolt or a band was set less than the sheet says.'],
      [lies('high', 'torque', 'travel'), 'A bolt or a band was set more than the sheet says.'],
      [lineStandsOut(/driven|level|codes|break-in/i), 'It left without it, or otherwise than others.'],
      [foundAtTeardown(['broken', 'cracked'], { part: /shaft|spline|drum|sprag|gear/i }), 'It broke under load.'],
      [nothingStandsOut, 'Then the reason may lie outside the unit.'],
    ],
    speaksAgainst: [[liesAsUsual('torque', 'travel'), 'It was set as others were.']],
    lookNow: [
      [neverRead('torque', 'travel'), 'How these were set is not known.'],
      [
        always('Ask what it pulled, how it was driven, and what was changed on the vehicle since.'),
        'Read the codes too.',
      ],
    ],
  },
};
