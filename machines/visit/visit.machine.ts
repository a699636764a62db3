import { setup } from 'xstate';

/**
 * The life of a visit, from the walk round the job to the closed case. States are situations, events
 * are facts that a person has said; a later fact implies the earlier ones, so nobody is made to say
 * that the story was heard before a repair counts.
 *
 * It knows one thing of the site: whether disinfection is due. A visit that is closed over it waits
 * in `disinfect` instead. "Stop, unsafe", interruption and hand-over are possible from everywhere and
 * lead back to where the visit stood.
 */
export const VISIT_EVENTS = [
  'hazards-scanned',
  'story-heard',
  'installation-identified',
  'verdict-reached',
  'verdict-withdrawn',
  'consent-given',
  'no-repair-today',
  'repaired',
  'proof-held',
  'repair-did-not-help',
  'root-cause-noted',
  'closed',
  'went-back',
  'interrupted',
  'resumed',
  'handed-over',
  'taken-over',
  'stopped-unsafe',
  'safe-again',
] as const;

export type VisitEvent = (typeof VISIT_EVENTS)[number];

export const visitMachine = setup({
  types: {
    context: {} as { disinfectionDue: boolean },
    input: {} as { disinfectionDue: boolean },
    events: {} as { type: VisitEvent },
  },
  guards: {
    due: ({ context }) => context.disinfectionDue,
    notDue: ({ context }) => !context.disinfectionDue,
  },
}).createMachine({
  id: 'visit',
  context: ({ input }) => ({ disinfectionDue: input.disinfectionDue }),
  initial: 'onSite',
  states: {
    onSite: {
      initial: 'finding',
      on: {
        interrupted: 'interrupted',
        'handed-over': 'handedOver',
        'stopped-unsafe': 'stopped',
        closed: [{ guard: 'due', target: '.acting.disinfect' }, { target: 'closed' }],
      },
      states: {
        finding: {
          initial: 'arrive',
          on: {
            'verdict-reached': 'acting.explain',
            'consent-given': 'acting.repair',
            repaired: 'acting.prove',
          },
          states: {
            arrive: {
              on: {
                'hazards-scanned': 'story',
                'story-heard': 'identify',
                'installation-identified': 'diagnose',
              },
            },
            story: {
              on: {
                'story-heard': 'identify',
                'installation-identified': 'diagnose',
                'went-back': 'arrive',
              },
            },
            identify: { on: { 'installation-identified': 'diagnose', 'went-back': 'story' } },
            diagnose: { id: 'diagnose', on: { 'went-back': 'identify' } },
          },
        },
        acting: {
          initial: 'explain',
          on: { 'verdict-withdrawn': 'finding.diagnose' },
          states: {
            explain: {
              on: {
                'consent-given': 'repair',
                'no-repair-today': 'disinfect',
                repaired: 'prove',
                'went-back': '#diagnose',
              },
            },
            repair: { on: { repaired: 'prove', 'went-back': 'explain' } },
            prove: {
              on: {
                'proof-held': 'rootCause',
                'repair-did-not-help': '#diagnose',
                'went-back': 'repair',
              },
            },
            rootCause: { on: { 'root-cause-noted': 'disinfect', 'went-back': 'prove' } },
            disinfect: {
              always: { guard: 'notDue', target: 'handBack' },
              on: { 'went-back': 'rootCause' },
            },
            handBack: {
              always: { guard: 'due', target: 'disinfect' },
              on: { 'went-back': 'rootCause' },
            },
          },
        },
        here: { type: 'history', history: 'deep' },
      },
    },
    interrupted: {
      on: { resumed: 'onSite.here', 'handed-over': 'handedOver', 'stopped-unsafe': 'stopped' },
    },
    handedOver: { on: { 'taken-over': 'onSite.here', 'stopped-unsafe': 'stopped' } },
    stopped: { on: { 'safe-again': 'onSite.here' } },
    closed: { type: 'final' },
  },
});
