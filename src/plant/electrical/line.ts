/** Radians a second of a sixty-hertz line: the whole plant is of one frequency. */
export const LINE_RADIANS = 2 * Math.PI * 60;
