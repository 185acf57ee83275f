// What the lines of a reading's uncertainty budget are called, wherever they are shown.

/** The one that more reads shrink. */
export const repeatabilityLine = 'repeatability';

export const handForceLine = 'hand force on the push';
export const baseOnPumpLine = 'dial base on the pump';
export const waveringLine = 'wavering needle';
export const resolutionLine = 'dial resolution';
export const betweenLeavesLine = 'between the leaves';

/** Of a feeler reading that was put in terms of air. */
export const feelerBiasLine = 'feeler bias';

/** Those that the gauge itself brings. */
export const permittedErrorLine = 'dial permitted error';
export const leafLine = 'leaf permitted error';
export const micrometerLine = 'micrometer';
export const gaugeErrorLine = 'gauge permitted error';
export const offSquareLine = 'dial out of square';
