import type { Problem } from '../catalog/catalog.ts';
import type { Separation } from './separate.ts';

/** What the writers of content should mend, in the form of the other checks of content. */
export function separationProblems({ still, pairs, unmoved, forbidden, groups }: Separation): Problem[] {
  return [
    ...still.map((name) => ({
      at: `faults/${name}`,
      message: 'changes no reading',
      hint: 'give it edits, or signs on the checks that would show it',
    })),
    ...pairs
      .filter(({ kind, faults }) => kind === 'alike' && !faults.some((fault) => still.includes(fault)))
      .map(({ faults: [one, other], sites }) => ({
        at: `faults/${one}`,
        message: `nothing tells it from ${other} on ${sites.join(', ')}`,
        hint: 'give one of them a sign or both one repair, or keep them together on purpose',
      })),
    ...unmoved.map((id) => ({
      at: `checks/${id}`,
      message: 'no fault moves it',
      hint: 'give a fault a sign on it, make it the proof of a repair, or remove it',
    })),
    ...forbidden.map(({ check, why }) => ({
      at: `checks/${check}`,
      message: `the interlock lets nobody take it: ${why}`,
      hint: 'mend its site, its place or its hazards',
    })),
    ...groups
      .filter(({ faults }) => faults.length < 2)
      .map(({ id, faults }) => ({
        at: `faults/${faults[0]} › together`,
        message: `nothing else is kept together under ${id}`,
        hint: 'mend the name of the group',
      })),
  ];
}
