import { controlled, type Drive, spareTorque, startsIn } from './drive.ts';

/**
 * Where does a run-up end?
 *
 * From standstill in steps of one percent of synchronous speed in the direction of the torque, with
 * the start control looked at on every step, to the first speed where torque meets load. There are
 * several equilibria (crawling, start branch held in) and the way decides, so nothing jumps ahead.
 * Leaves out time: how long it takes.
 *
 * @source method: march along the torque-speed curve; the steps and the hysteresis are ours
 */
export interface RunEnd {
  /** Share of synchronous speed, negative when turning backwards. */
  readonly speed: number;
  readonly startIn: boolean;
  /** The relay kept opening and closing. */
  readonly chatters: boolean;
  /** Speed at which the start branch was last let go. */
  readonly opensAt: number | undefined;
  /** How often the start control changed its mind on the way. */
  readonly changes: number;
}

const STEP = 0.01;
const MOST_STEPS = 600;
const MOST_CHANGES = 60;
const MOST_TRIES = 40;
/** Speeds closer than this are one, and torques smaller than this are none. */
const SAME_SPEED = 1e-12;
const LEAST_TORQUE = 1e-11;

interface Walk {
  speed: number;
  startIn: boolean;
  opensAt: number | undefined;
  changes: number;
  /** Where the last step was taken from and which way; no way yet at the start. */
  before: { speed: number; sign: number };
}

/** Marches from a speed to the first equilibrium; `held` keeps the start branch as it is. */
function march(drive: Drive, from: { speed: number; startIn: boolean }, held: boolean): RunEnd {
  const walk: Walk = { ...from, opensAt: undefined, changes: 0, before: { speed: from.speed, sign: 0 } };
  for (let step = 0; step < MOST_STEPS && walk.changes <= MOST_CHANGES; step++) {
    const sign = Math.sign(spareTorque(drive, walk.speed, walk.startIn));
    const crossed = sign !== 0 && walk.before.sign === -sign;
    if (crossed) walk.speed = meet(drive, { one: walk.before.speed, other: walk.speed }, walk.startIn);
    const moved = !held && changed(drive, walk);
    if (!moved && (crossed || sign === 0)) return ended(walk);
    advance(walk, moved ? Math.sign(spareTorque(drive, walk.speed, walk.startIn)) : sign);
  }
  return { ...ended(walk), startIn: true, chatters: true };
}

/** One step on; a contact has the length of a step to act, so it changes at most once a step. */
function advance(walk: Walk, sign: number): void {
  walk.before = { speed: walk.speed, sign };
  walk.speed = Math.max(-1, Math.min(1, walk.speed + sign * STEP));
}

const ended = ({ speed, startIn, opensAt, changes }: Walk): RunEnd => ({
  speed,
  startIn,
  chatters: false,
  opensAt,
  changes,
});

/** Held at a speed without a way that led there. */
export const heldAt = (speed: number, startIn: boolean): RunEnd => ({
  speed,
  startIn,
  chatters: false,
  opensAt: undefined,
  changes: 0,
});

/** Lets the start control have its way at this speed; true when it changed its mind. */
function changed(drive: Drive, walk: Walk): boolean {
  if (controlled(drive, walk.speed, walk.startIn) === walk.startIn) return false;
  walk.startIn = !walk.startIn;
  walk.changes++;
  if (!walk.startIn) walk.opensAt = walk.speed;
  return true;
}

/**
 * Speed between two where torque meets load; leaves the currents there in `drive.at`.
 *
 * @source method: false position with the Illinois halving of the end that does not move
 */
function meet(drive: Drive, between: { one: number; other: number }, startIn: boolean): number {
  let { one, other } = between;
  let below = spareTorque(drive, one, startIn);
  let above = spareTorque(drive, other, startIn);
  if (below * above > 0) return other;
  let speed = other;
  for (let n = 0; n < MOST_TRIES && Math.abs(other - one) > SAME_SPEED; n++) {
    speed = below === above ? (one + other) / 2 : (one * above - other * below) / (above - below);
    const middle = spareTorque(drive, speed, startIn);
    if (Math.abs(middle) < LEAST_TORQUE) break;
    if (Math.sign(middle) === Math.sign(above)) below /= 2;
    else {
      one = other;
      below = above;
    }
    other = speed;
    above = middle;
  }
  spareTorque(drive, speed, startIn);
  return speed;
}

/** The fastest equilibrium in a direction, for a motor that was given a push; 0 when there is none. */
function fastest(drive: Drive, direction: number, startIn: boolean): number {
  for (let n = 100; n > 0; n--) {
    const speed = direction * (n - 1) * STEP;
    if (spareTorque(drive, speed, startIn) * direction <= 0) continue;
    return meet(drive, { one: speed, other: direction * n * STEP }, startIn);
  }
  return 0;
}

/** Called, with nothing forced: a torque below breakaway leaves it standing. */
export function runUp(drive: Drive): RunEnd {
  const startIn = startsIn(drive);
  const pull = spareTorque(drive, 0, startIn);
  return Math.abs(pull) >= drive.breakaway ? march(drive, { speed: 0, startIn }, false) : stall(drive);
}

/** Standing still, with the start branch where its control leaves it. */
export function stall(drive: Drive): RunEnd {
  const startIn = startsIn(drive);
  spareTorque(drive, 0, startIn);
  return heldAt(0, controlled(drive, 0, startIn));
}

/**
 * Made to run, whatever the torque at standstill, and the start branch made to end as told. A motor
 * that would start by itself takes its own way; one that would not is looked for from the top.
 */
export function forcedRun(drive: Drive, releases: boolean): RunEnd {
  const startIn = startsIn(drive);
  const pull = spareTorque(drive, 0, startIn);
  const starts = Math.abs(pull) >= Math.min(drive.breakaway, drive.machine.fullTorque);
  if (!starts) return pushed(drive, pull, !releases);
  const end = march(drive, { speed: 0, startIn: releases ? startIn : true }, !releases);
  if (!releases || !end.startIn) return end;
  const out = march(drive, { speed: end.speed, startIn: false }, true);
  return out.speed === 0 ? pushed(drive, pull, false) : out;
}

function pushed(drive: Drive, pull: number, startIn: boolean): RunEnd {
  const first = fastest(drive, pull < 0 ? -1 : 1, startIn);
  const speed = first === 0 ? fastest(drive, pull < 0 ? 1 : -1, startIn) : first;
  return heldAt(speed, startIn);
}
