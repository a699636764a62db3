/**
 * What does a pipe cost in head, and what does a hole in it let out?
 *
 * Friction of turbulent cold water; holes as sharp-edged orifices, so that twice the pressure lets
 * out 1.4 times as much. Leaves out bends and valves.
 */
export interface Pipe {
  /** Metres. */
  readonly bore: number;
  readonly length: number;
  /** Hazen–Williams coefficient. */
  readonly smoothness: number;
}

/** The printed 0.2083 ft in 100 ft at coefficient 100, one gallon a minute and one inch, in SI. */
const FRICTION = 10.96171;

/**
 * Metres of head lost in a pipe, with the sign of the flow.
 *
 * @source law: Hazen–Williams, exponents 1.852 and 4.8655
 */
export function frictionHead(pipe: Pipe, flow: number): number {
  const size = Math.abs(flow) ** 1.852;
  return (Math.sign(flow) * FRICTION * pipe.length * size) / (pipe.smoothness ** 1.852 * pipe.bore ** 4.8655);
}

/** Metres a second in the pipe. @source law: flow over area */
export const velocity = (bore: number, flow: number): number => (4 * flow) / (Math.PI * bore * bore);

/** A hole: cubic metres a second at one metre of head across it. */
export interface Hole {
  readonly perRootMetre: number;
}

/** The hole that lets out a flow at a head. @source law: Torricelli */
export function holeWith(flow: number, head: number): Hole {
  return { perRootMetre: head > 0 ? flow / Math.sqrt(head) : 0 };
}

/** Cubic metres a second through a hole; backwards when more presses from outside. */
export const throughHole = (hole: Hole, head: number): number =>
  Math.sign(head) * hole.perRootMetre * Math.sqrt(Math.abs(head));
