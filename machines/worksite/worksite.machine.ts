import { and, not, or, setup, stateIn } from 'xstate';
import type { Place } from '../../src/schema/basics.ts';
import type { WorksiteEvent } from './events.ts';

/**
 * The state of the work site as people have said it: the one owner of what is live, open, proved,
 * lifted and bled. Every other part of the program reads it; none keeps a second copy.
 *
 * Unknown counts as the dangerous value, so everything begins there. The guards keep nonsense out:
 * proof of dead needs a lock and an open cover, a closed cover drops its proof, power comes back only
 * with covers on and people clear, and a lapse takes back every claim that others could have undone.
 * `unsure` is a supply that was off or locked when it was last said: it counts as live, and as
 * nothing that may be measured.
 *
 * The regions from `supply` to `work` form the core. The seven after them remember facts: they may ask
 * the core, the core never asks them, which is what lets the core be walked alone.
 */
const worksiteSetup = setup({
  types: { events: {} as WorksiteEvent },
  guards: {
    working: stateIn({ work: 'working' }),
    live: stateIn({ supply: 'live' }),
    locked: stateIn({ supply: 'locked' }),
    peopleClear: stateIn({ people: 'clear' }),
    connected: stateIn({ leads: 'connected' }),
    split: stateIn({ leads: 'split' }),
    inCircuit: stateIn({ electronics: 'in-circuit' }),
    boxProved: stateIn({ box: 'proved' }),
    switchProved: stateIn({ switch: 'proved' }),
    wellProved: stateIn({ well: 'proved' }),
    wellClosed: stateIn({ well: 'closed' }),
    someProved: or([
      stateIn({ panel: 'proved' }),
      stateIn({ switch: 'proved' }),
      stateIn({ box: 'proved' }),
      stateIn({ well: 'proved' }),
    ]),
    /** The control loop is read with one probe in the switch and one in the box. */
    loopCoversOnly: and([stateIn({ panel: 'closed' }), stateIn({ well: 'closed' })]),
    allClosed: and([
      stateIn({ panel: 'closed' }),
      stateIn({ switch: 'closed' }),
      stateIn({ box: 'closed' }),
      stateIn({ well: 'closed' }),
    ]),
    at: ({ event }, params: { place: Place }) => 'place' in event && event.place === params.place,
  },
});

const at = (place: Place) => ({ type: 'at', params: { place } }) as const;

/**
 * Dead with the lock on; or energised, people kept away, and no other cover off. Switch and box may be
 * open together, because a reading of the control loop spans the two.
 */
const mayOpen = (name: Place) => {
  const othersClosed = name === 'switch' || name === 'box' ? 'loopCoversOnly' : 'allClosed';
  return and(['working', at(name), or(['locked', and(['live', 'peopleClear', othersClosed])])]);
};
const mayEnergise = and(['working', 'allClosed', 'peopleClear', 'connected', 'inCircuit']);
/** The one trial of a tripped breaker may be made with the motor leads lifted. */
const mayReset = and(['working', 'allClosed', 'peopleClear', not('split')]);
const handsOnLeads = and([
  'working',
  or([and([at('box'), 'boxProved']), and([at('switch'), 'switchProved'])]),
]);

/** Others could have undone it meanwhile, or it is no longer safe to rely on. */
const falls = <T extends string>(target: T) =>
  ({ lapsed: target, 'supply-restored': target, 'stop-unsafe': target }) as const;

function place(name: Place) {
  const mayClose = name === 'well' ? and(['working', at(name), not('split')]) : and(['working', at(name)]);
  return {
    initial: 'closed',
    states: {
      closed: { on: { 'open-cover': { target: 'open', guard: mayOpen(name) } } },
      open: {
        on: {
          'prove-dead': { target: 'proved', guard: and(['working', at(name), 'locked']) },
          'close-cover': { target: 'closed', guard: mayClose },
        },
      },
      proved: { on: { 'close-cover': { target: 'closed', guard: mayClose }, ...falls('open') } },
    },
  } as const;
}

export const worksiteMachine = worksiteSetup.createMachine({
  id: 'worksite',
  type: 'parallel',
  states: {
    supply: {
      initial: 'live',
      states: {
        live: { on: { 'switch-off': { target: 'off', guard: 'working' } } },
        off: {
          on: {
            'lock-and-tag': { target: 'locked', guard: and(['working', 'peopleClear']) },
            energise: { target: 'live', guard: mayEnergise },
            'reset-breaker': { target: 'live', guard: mayReset },
            ...falls('unsure'),
          },
        },
        locked: {
          on: {
            unlock: { target: 'off', guard: and(['working', 'allClosed', 'peopleClear']) },
            ...falls('unsure'),
          },
        },
        unsure: {
          on: {
            'switch-off': { target: 'off', guard: 'working' },
            energise: { target: 'live', guard: mayEnergise },
          },
        },
      },
    },
    panel: place('panel'),
    switch: place('switch'),
    box: place('box'),
    well: place('well'),
    leads: {
      initial: 'connected',
      states: {
        connected: { on: { 'lift-leads': { target: 'lifted', guard: handsOnLeads } } },
        lifted: {
          on: {
            'land-leads': { target: 'connected', guard: handsOnLeads },
            'split-at-wellhead': { target: 'split', guard: and(['working', 'wellProved']) },
          },
        },
        split: { on: { 'join-at-wellhead': { target: 'lifted', guard: and(['working', 'wellProved']) } } },
      },
    },
    charge: {
      initial: 'possible',
      states: {
        possible: { on: { 'bleed-capacitors': { target: 'bled', guard: and(['working', 'boxProved']) } } },
        bled: {
          on: {
            'close-cover': { target: 'possible', guard: and(['working', at('box')]) },
            ...falls('possible'),
          },
        },
      },
    },
    electronics: {
      initial: 'in-circuit',
      states: {
        'in-circuit': {
          on: { 'disconnect-electronics': { target: 'disconnected', guard: and(['working', 'someProved']) } },
        },
        disconnected: {
          on: { 'reconnect-electronics': { target: 'in-circuit', guard: and(['working', 'someProved']) } },
        },
      },
    },
    people: {
      initial: 'near',
      states: {
        near: { on: { 'clear-people': { target: 'clear', guard: 'working' } } },
        clear: {
          on: {
            /** Work on the leads or the covers brings hands back: ask again before power or test volts. */
            'lift-leads': 'near',
            'land-leads': 'near',
            'split-at-wellhead': 'near',
            'join-at-wellhead': 'near',
            'close-cover': { target: 'near', guard: 'locked' },
            ...falls('near'),
          },
        },
      },
    },
    disinfection: {
      initial: 'none',
      states: {
        none: { on: { 'open-cover': { target: 'due', guard: mayOpen('well') } } },
        due: { on: { disinfected: { target: 'done', guard: and(['working', 'wellClosed']) } } },
        done: { on: { 'open-cover': { target: 'due', guard: mayOpen('well') } } },
      },
    },
    work: {
      initial: 'working',
      states: {
        working: { on: { 'stop-unsafe': 'stopped' } },
        stopped: { on: { resume: 'working' } },
      },
    },
    pressure: {
      initial: 'up',
      states: {
        up: { on: { 'relieve-pressure': { target: 'relieved', guard: and(['working', 'locked']) } } },
        relieved: { on: { energise: 'up', 'reset-breaker': 'up', unlock: 'up', ...falls('up') } },
      },
    },
    deadHeadKit: {
      initial: 'not-shown',
      states: {
        'not-shown': { on: { 'kit-shown': { target: 'shown', guard: and(['working', 'live']) } } },
        shown: { on: { 'switch-off': 'not-shown', ...falls('not-shown') } },
      },
    },
    /** A part known to be good, fitted dead so that a live reading can be taken with it. */
    substitute: {
      initial: 'none',
      states: {
        none: { on: { 'substitute-fitted': { target: 'fitted', guard: and(['working', 'boxProved']) } } },
        fitted: { on: { 'substitute-removed': 'none' } },
      },
    },
    secondSource: {
      initial: 'possible',
      states: {
        possible: { on: { 'no-second-source': { target: 'none-seen', guard: 'working' } } },
        'none-seen': { on: { 'second-source-seen': 'possible', ...falls('possible') } },
      },
    },
    reset: {
      initial: 'unknown',
      states: {
        unknown: { on: { 'no-reset-made': 'unused', 'reset-used': 'used', 'reset-breaker': 'used' } },
        unused: { on: { 'reset-used': 'used', 'reset-breaker': 'used' } },
        used: {},
      },
    },
    overload: {
      initial: 'unknown',
      states: {
        unknown: { on: { 'no-overload-pressed': 'unused', 'overload-button-used': 'used' } },
        unused: { on: { 'overload-button-used': 'used' } },
        used: {},
      },
    },
    insulation: {
      initial: 'untested',
      states: {
        untested: { on: { 'insulation-good': 'good', 'insulation-bad': 'bad' } },
        good: { on: { 'insulation-bad': 'bad' } },
        bad: { on: { 'insulation-good': 'good' } },
      },
    },
  },
});
