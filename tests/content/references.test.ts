import { describe, expect, test } from 'vitest';
import { type Json, problemsOf, withEdit, withFile, without } from './support/broken.ts';

/** Second ring: what a record names and nobody has. */
const variants = (edit: Json) => [{ id: 'one', edits: [edit] }];

describe('an id that leads nowhere is named with its path', () => {
  test('a source', () => {
    const spoilt = withEdit('conductors/copper-12', (record) => {
      const [first, ...rest] = record.from as Json[];
      record.from = [{ ...first, source: 'hearsay' }, ...rest];
    });
    expect(problemsOf(spoilt)).toEqual(['conductors/copper-12 › from[0] › source: sources has no hearsay']);
  });

  test('a netlist of a box', () => {
    const problems = problemsOf(without('netlists/motor-2-wire'));
    expect(problems).toContain('boxes/none-2-wire › pieces: netlists has no motor-2-wire');
  });

  test('a node that a check probes', () => {
    const spoilt = withEdit('checks/ohms-yellow-black', (record) => {
      record.at = { between: ['lead.Y', 'lead.Q'] };
    });
    expect(problemsOf(spoilt)).toEqual(['checks/ohms-yellow-black › at: no netlist has lead.Q']);
  });

  test('a part that a fault edits', () => {
    const spoilt = withEdit('faults/winding-main-open', (record) => {
      record.variants = variants({ edit: 'open', part: 'motor.flywheel' });
    });
    expect(problemsOf(spoilt)).toContain(
      'faults/winding-main-open › variants[0]: no netlist has motor.flywheel',
    );
  });

  test('an answer that a fault shows and its check does not have', () => {
    const spoilt = withEdit('faults/winding-main-open', (record) => {
      record.signs = [{ check: 'motor-sound', answer: 'whistles', how: 'always' }];
    });
    expect(problemsOf(spoilt)).toEqual([
      'faults/winding-main-open › signs[0] › answer: motor-sound has no answer whistles',
    ]);
  });

  test('an action, a circumstance, a hazard, an instrument and a part', () => {
    const gone = ['actions/pull-pump', 'circumstances/lightning', 'hazards/live-parts'];
    const others = ['instruments/ohmmeter', 'parts/splice-kit'];
    for (const path of [...gone, ...others]) {
      const [folder = '', id = ''] = path.split('/');
      expect(
        problemsOf(without(path)).some((text) => text.endsWith(`${folder} has no ${id}`)),
        path,
      ).toBe(true);
    }
  });

  test('a motor model whose row is gone', () => {
    expect(problemsOf(without('motors/2-wire-1hp-230v'))).toContain(
      'motor-models/2-wire-1hp-230v › id: motors has no 2-wire-1hp-230v',
    );
  });

  test('a name that every object has is still unknown', () => {
    const spoilt = withEdit('actions/pull-pump', (record) => {
      record.parts = ['constructor'];
    });
    expect(problemsOf(spoilt)).toEqual(['actions/pull-pump › parts: parts has no constructor']);
  });
});

describe('words that are missing or left over are named', () => {
  test.each(['checks/motor-sound', 'faults/rotor-locked', 'actions/pull-pump', 'site-steps/prove-dead'])(
    'no words for %s',
    (path) => {
      expect(problemsOf(without(`words/en/${path}`))).toContain(`words/en/${path}: has no words`);
    },
  );

  test('no text for an answer', () => {
    const spoilt = withEdit('words/en/checks/motor-sound', (record) => {
      const { silence: _, ...rest } = record.answers as Json;
      record.answers = rest;
    });
    expect(problemsOf(spoilt)).toEqual(['words/en/checks/motor-sound › answers: no text for silence']);
  });

  test('no text for a variant', () => {
    const spoilt = withEdit('words/en/faults/drop-conductor-open', (record) => {
      record.variants = {};
    });
    expect(problemsOf(spoilt)).toContain(
      'words/en/faults/drop-conductor-open › variants: no text for yellow',
    );
  });

  test('no name for a small record', () => {
    const spoilt = withEdit('words/en/names/hazards', (record) => {
      record.texts = {};
    });
    expect(problemsOf(spoilt)).toContain('words/en/names/hazards › texts: no name for live-parts');
  });

  test('words without a record', () => {
    const words = { id: 'fly', name: 'Fly', steps: ['Flap.'] };
    expect(problemsOf(withFile('words/en/actions/fly', words))).toEqual([
      'words/en/actions/fly: words for a record that does not exist',
    ]);
  });
});
