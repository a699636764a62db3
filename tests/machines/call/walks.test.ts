import { describe, expect, test } from 'vitest';
import { permits } from '../../../machines/worksite/permits.ts';
import { foldSite } from '../../../machines/worksite/site.ts';
import { workPlace } from '../../../machines/worksite/work.ts';
import { catalog } from '../../journeys/content.ts';
import type { Truth } from '../../journeys/truth.ts';
import { TRUTHS } from '../../journeys/truths.ts';
import { type Played, play, verdictOf } from './play.ts';

/**
 * Whole calls through trees, interlock, planner and belief on simulated readings. The expected ends
 * are common practice: which two or three readings settle which fault.
 */
const known = catalog();
const isEnergised = (check: string): boolean => {
  const record = known.checks[check];
  return record?.site.supply === 'live' && 'quantity' in record.reads;
};

/** The act that the content gives the fault on this box. */
function actionOf(truth: Truth): string {
  const fault = known.faults[truth.fault];
  const box = known.boxes[truth.installation.box ?? ''];
  return (box?.plugApart ? fault?.actionInPlugApart : undefined) ?? fault?.action ?? '';
}

describe.each(Object.entries(TRUTHS))('%s', (_name, truth: Truth) => {
  const played = play(truth);
  test('ends in the right repair', () => {
    const verdict = verdictOf(played);
    expect(verdict.action).toBe(actionOf(truth));
    expect(['named', 'group']).toContain(verdict.kind);
    expect(verdict.faults.map((one) => one.fault)).toContain(truth.fault);
  });
  test('shows no check before the interlock permits it', () => {
    expect(unpermitted(played)).toEqual([]);
  });
  test('asks no check twice', () => {
    expect(new Set(played.checks).size).toBe(played.checks.length);
  });
});

/** Checks that were on screen although the site was not in the state that they need. */
function unpermitted({ views }: Played): string[] {
  return views.flatMap(({ state, view }) => {
    if (view.next.kind !== 'check') return [];
    const box = known.boxes[state.installation.box ?? ''];
    const site = foldSite(state.siteEvents.map((one) => one.said));
    const work = {
      ...workPlace(known, box === undefined ? [] : [box], state.installation),
      site,
      who: state.person,
    };
    return view.next.checks
      .map(({ check }) => known.checks[check])
      .filter((check) => check === undefined || !permits(check, work).permitted)
      .map((check) => check?.id ?? 'unknown check');
  });
}

describe('the way to the verdict', () => {
  test('one open pole: the pair is dead, each load to ground alive, and no pump is blamed', () => {
    const { checks } = play(TRUTHS.oneSwitchPole);
    expect(checks).toContain('volts-switch-load-pair');
    expect(checks).toContain('volts-switch-load-1');
    expect(checks).toContain('volts-switch-load-2');
    expect(checks.filter((check) => check.startsWith('ohms-well'))).toEqual([]);
  });
  test('a failed start capacitor in a start-only box is found without one energised reading', () => {
    const { checks } = play(TRUTHS.startCapacitor);
    expect(checks.filter(isEnergised)).toEqual([]);
    expect(checks).toContain('start-capacitance');
    expect(checks).toContain('ohms-yellow-black');
  });
  test('a tripped overload is read before its button is touched', () => {
    const { checks, state } = play(TRUTHS.mainOverload);
    expect(checks).toContain('ohms-main-overload');
    expect(state.siteEvents.map((one) => one.said.type)).not.toContain('overload-button-used');
  });
  test('an open contactor coil has full volts across it', () => {
    expect(play(TRUTHS.contactorCoil).checks).toContain('volts-coil');
  });
  test('an open splice is told from an open winding at the well head, and not pulled', () => {
    const splice = play(TRUTHS.yellowSplice);
    expect(splice.checks).toContain('ohms-well-yellow-black');
    expect(known.actions[verdictOf(splice).action]?.pull).toBe(false);
    const winding = play(TRUTHS.startWinding);
    expect(winding.checks.some((check) => check.startsWith('ohms-well'))).toBe(true);
    expect(known.actions[verdictOf(winding).action]?.pull).toBe(true);
  });
  test('pulling needs the three ohms and the insulation at the box, whatever the probability', () => {
    const { checks } = play(TRUTHS.startWinding);
    for (const check of ['ohms-yellow-black', 'ohms-yellow-red', 'ohms-black-red', 'insulation-system']) {
      expect(checks).toContain(check);
    }
  });
});

describe('honest ends', () => {
  test('a motor row and a box that nobody knows still lead to a repair', () => {
    const truth: Truth = {
      installation: { ...TRUTHS.startCapacitor.installation },
      fault: 'start-capacitor-open',
      variant: 'open',
    };
    expect(verdictOf(play(truth)).action).toBe('fit-matched-lid');
  });
  test('a trainee alone is never led to a reading that takes a cover off', () => {
    const { views } = play(TRUTHS.yellowSplice, 'trainee-alone');
    const asked = views.flatMap(({ view }) =>
      view.next.kind === 'check' ? view.next.checks.map((one) => one.check) : [],
    );
    expect(asked.filter((check) => known.checks[check]?.site.cover === 'open')).toEqual([]);
  });
});
