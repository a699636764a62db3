/** Types of the visit events that the screens write. */
export const CLOSED = 'closed';
export const REPAIRED = 'repaired';
