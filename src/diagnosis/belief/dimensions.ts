import { UNKNOWNS, WATER_UNKNOWNS } from '../../plant/types.ts';

/**
 * The axes of a piece's Gaussian: what is unknown of the installation, one model error for each
 * regime in which readings share it, the severity within the piece's own stratum, and that of a
 * cause over its whole span.
 */
export const AXES = [
  ...UNKNOWNS,
  ...WATER_UNKNOWNS,
  'modelRunning',
  'modelSaturated',
  'severity',
  'causeSeverity',
] as const;
export type Axis = (typeof AXES)[number];

export const AXIS_COUNT = AXES.length;
export const axisOf = (name: Axis): number => AXES.indexOf(name);
