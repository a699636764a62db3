import { describe, expect, test } from 'vitest';
import { type Json, makers, problemsOf, withEdit } from './support/broken.ts';

/** Third ring: records that are well formed, refer to what exists, and still make no sense. */
describe('a motor row that breaks physics is named', () => {
  const row = 'motors/3-wire-2hp-230v-start-and-run';

  test('more ohms than a smaller motor', () => {
    const spoilt = withEdit(row, (record) => {
      record.winding = { main: [18, 23, 'ohm'], start: [55, 72, 'ohm'] };
    });
    expect(problemsOf(spoilt)).toEqual([
      expect.stringMatching(/^motors\/3-wire-2hp-230v-start-and-run › winding: more ohms than the smaller/),
    ]);
  });

  test('a start winding below the main', () => {
    const spoilt = withEdit(row, (record) => {
      record.winding = { main: [1.8, 2.3, 'ohm'], start: [1.5, 2.2, 'ohm'] };
    });
    expect(problemsOf(spoilt)).toEqual([`${row} › winding › start: not above the main winding`]);
  });

  test('more amps at full load than at service factor', () => {
    const spoilt = withEdit(row, (record) => {
      const load = record.fullLoad as Json;
      record.fullLoad = { ...load, amps: { yellow: [14, 'A'], black: [9.3, 'A'], red: [2.6, 'A'] } };
    });
    expect(problemsOf(spoilt)).toEqual([`${row} › fullLoad › amps: more than at service-factor load`]);
  });

  test('a locked rotor that draws no more than a running one', () => {
    const spoilt = withEdit(row, (record) => {
      record.lockedRotor = [5.1, 'A'];
    });
    expect(problemsOf(spoilt)).toEqual([`${row} › lockedRotor: not above the running amps`]);
  });

  test('a run capacitor on a motor that has none', () => {
    const spoilt = withEdit('motors/3-wire-1hp-230v-start-only', (record) => {
      record.runCapacitor = [10, 'uF'];
      for (const entry of record.from as Json[]) (entry.of as string[]).push('runCapacitor');
    });
    expect(problemsOf(spoilt)).toEqual([
      'motors/3-wire-1hp-230v-start-only › runCapacitor: start-only and this do not go together',
    ]);
  });

  test('readings of a three-lead motor on a two-lead row', () => {
    const spoilt = withEdit('motors/2-wire-1hp-230v', (record) => {
      record.winding = { main: [2.2, 2.7, 'ohm'], start: [9.9, 12.1, 'ohm'] };
    });
    expect(problemsOf(spoilt)).toEqual([
      'motors/2-wire-1hp-230v › winding: these readings do not exist on a 2-wire motor',
    ]);
  });
});

describe('a figure nobody vouches for is named', () => {
  test('in a motor row', () => {
    const spoilt = withEdit('motors/2-wire-1hp-230v', (record) => {
      for (const entry of record.from as Json[]) {
        entry.of = (entry.of as string[]).filter((field) => field !== 'lockedRotor');
      }
    });
    expect(problemsOf(spoilt)).toEqual([
      'motors/2-wire-1hp-230v › lockedRotor: no entry of from vouches for this figure',
    ]);
  });

  test('in a check', () => {
    const spoilt = withEdit('checks/ohms-main-overload', (record) => {
      record.from = [{ source: 'service-judgement', where: 'minutes', mark: 'practice', of: ['minutes'] }];
    });
    expect(problemsOf(spoilt)).toEqual([
      'checks/ohms-main-overload › band: no entry of from vouches for this figure',
    ]);
  });

  test('and an entry that vouches for nothing', () => {
    const spoilt = withEdit('motors/2-wire-1hp-230v', (record) => {
      const [first, ...rest] = record.from as Json[];
      record.from = [{ ...first, of: ['fullLoad.ohms'] }, ...rest, { ...first, of: undefined }];
    });
    expect(problemsOf(spoilt)).toEqual([
      'motors/2-wire-1hp-230v › from[0] › of: the record has no fullLoad.ohms',
    ]);
  });
});

describe('what no installation can have is named', () => {
  test('a fault whose parts never meet', () => {
    const spoilt = withEdit('faults/leads-exchanged', (record) => {
      record.variants = (record.variants as Json[]).map((variant) => ({
        ...variant,
        edits: [{ edit: 'exchange', parts: ['box.lead-yellow', 'switch.lead-one'] }],
      }));
    });
    expect(problemsOf(spoilt)).toContain(
      'faults/leads-exchanged › variants[0]: can occur in no installation: box.lead-yellow, switch.lead-one never meet',
    );
  });

  test('a check between nodes that never meet', () => {
    const spoilt = withEdit('checks/ohms-yellow-black', (record) => {
      record.at = { between: ['lead.Y', 'lead.1'] };
    });
    expect(problemsOf(spoilt)).toEqual([
      'checks/ohms-yellow-black › at: can be made in no installation: lead.Y, lead.1 never meet',
    ]);
  });

  test('a box whose pieces do not join', () => {
    const spoilt = withEdit('boxes/none-2-wire', (record) => {
      record.pieces = ['service', 'panel', 'motor-2-wire'];
    });
    expect(problemsOf(spoilt).some((text) => text.startsWith('boxes/none-2-wire › pieces: not joined'))).toBe(
      true,
    );
  });

  test('a box that holds a part twice', () => {
    const spoilt = withEdit('boxes/none-2-wire', (record) => {
      record.pieces = [...(record.pieces as string[]), 'panel'];
    });
    expect(problemsOf(spoilt)).toContain('boxes/none-2-wire › pieces: panel.breaker-1 occurs twice');
  });
});

describe('what must not stand in content is named', () => {
  const [maker = ''] = makers;

  test('the sources name makers', () => {
    expect(makers.length).toBeGreaterThan(0);
  });

  test("a caller's hand in a box", () => {
    const spoilt = withEdit('checks/look-box', (record) => {
      record.who = 'caller';
    });
    expect(problemsOf(spoilt)).toEqual([
      'checks/look-box › who: a caller only looks, listens and reads, with every cover on',
    ]);
  });

  test("a caller's probes at a distance", () => {
    const spoilt = withEdit('checks/volts-service-pair', (record) => {
      record.who = 'caller';
    });
    expect(problemsOf(spoilt)).toHaveLength(1);
  });

  test("a maker's name in a fault", () => {
    const spoilt = withEdit('faults/rotor-locked', (record) => {
      record.note = `usual with ${maker.toLowerCase()} motors`;
    });
    expect(problemsOf(spoilt)).toEqual([`faults/rotor-locked: names the maker ${maker}`]);
  });

  test("a maker's name in the words", () => {
    const spoilt = withEdit('words/en/site-steps/prove-dead', (record) => {
      record.shows = `A ${maker} meter shows nothing.`;
    });
    expect(problemsOf(spoilt)).toEqual([`words/en/site-steps/prove-dead: names the maker ${maker}`]);
  });
});
