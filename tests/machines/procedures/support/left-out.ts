/** Volts from a second source are met while the site is proved dead, before any check is asked. */
export const FOUND_WITHOUT_A_CHECK: readonly string[] = ['second-feed-live'];

/**
 * Checks that no tree asks, on purpose, and why. The planner proposes them whenever they are worth
 * their minutes. One that is added to the content belongs into a tree or into this list.
 */
const REASONS: Readonly<Record<string, readonly string[]>> = {
  'chooses the trees': ['what-is-seen'],
  'the story, told once and at any time': [
    'after-a-rest',
    'danger-signs',
    'storage-tank',
    'when-it-began',
    'breaker-reset-today',
  ],
  'read with the others of its set, which a tree asks for': [
    'amps-black',
    'ohms-after-cool-black-red',
    'ohms-after-cool-yellow-red',
    'ohms-sum-test',
  ],
  'a number says where, and outcomes cannot': [
    'ohms-yellow-ground',
    'ohms-black-ground',
    'ohms-red-ground',
    'open-lead-ratio',
    'volts-terminal-yellow',
    'volts-terminal-black',
    'volts-terminal-red',
  ],
  'stands in for others that a tree asks for': [
    'cycle-on-time',
    'cycle-off-time',
    'ohms-sense-coil',
    'ohms-disconnect-1',
    'ohms-disconnect-2',
  ],
  'proof of a repair': ['three-cycles', 'starts-a-day', 'chlorine-residual', 'water-sample'],
};

export const OWN_CHECKS: readonly string[] = Object.values(REASONS).flat();
