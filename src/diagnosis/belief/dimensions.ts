import { UNKNOWNS } from '../../plant/types.ts';

/**
 * The axes of a piece's Gaussian: what is unknown of the installation, one model error for each
 * regime in which readings share it, and the severity within the piece's own stratum.
 */
export const AXES = [...UNKNOWNS, 'modelRunning', 'modelSaturated', 'severity'] as const;
export type Axis = (typeof AXES)[number];

export const AXIS_COUNT = AXES.length;
export const axisOf = (name: Axis): number => AXES.indexOf(name);
