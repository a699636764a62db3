import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { beforeAll, describe, expect, test } from 'vitest';
import type { SiteStepView } from '../../machines/call/types.ts';
import type { Figures } from '../../src/proof/prove/figures.ts';
import { judgeEnd } from '../../src/proof/prove/judge-call.ts';
import { installationRows } from '../../src/proof/prove/matrix.ts';
import { PlayedCall } from '../../src/proof/prove/play-call.ts';
import { PLAYS } from '../../src/proof/prove/plays.ts';
import { siteOf } from '../../src/proof/prove/site.ts';
import { groundOf, type Truth, toldAtFirst } from '../../src/proof/prove/truth.ts';
import { Watch } from '../../src/proof/prove/violations.ts';
import { catalog } from '../published/support/catalog.ts';

/** Found first, clean, by prior, in `--quick`: six calls, of which four at least. */
const LEAST_FOUND = 0.6;

describe('a quick sweep', () => {
  let figures: Figures;
  beforeAll(async () => {
    const folder = mkdtempSync(join(tmpdir(), 'prove-'));
    const file = join(folder, 'figures.json');
    await promisify(execFile)('node', ['src/proof/prove.mjs', '--quick', '--json', file], {
      env: { ...process.env, INIT_CWD: folder },
    });
    figures = JSON.parse(readFileSync(file, 'utf8'));
    rmSync(folder, { recursive: true });
  }, 900_000);

  test('nothing is asked for that the interlock forbids', () => {
    for (const play of ['clean', 'noisy'] as const) expect(figures[play]?.unsafe).toBe(0);
  });

  test('no sound pump is pulled', () => {
    expect(figures.clean?.wrongPull).toBe(0);
    expect(figures.uniform.clean?.wrongPull).toBe(0);
  });

  test('most faults are found first', () => {
    expect(figures.clean?.foundFirst).toBeGreaterThan(LEAST_FOUND);
  });

  test('what was not measured is null, not nothing', () => {
    expect(figures.catalogueOrder).toBeNull();
    expect(figures.optimum).toBeNull();
    expect(figures.contentVersion).toBe(catalog.version);
  });
});

const row = installationRows(catalog).find(({ id }) => id.startsWith('start-and-run-main-overload-in-line'))!;
const job = { row, hidden: [] };
const ground = groundOf(catalog, job);

function truthOf(fault: string, severity?: number): Truth {
  const hypothesis = ground.hypotheses.find((one) => one.fault.id === fault)!;
  return {
    hypothesis,
    severity,
    choice: ground.choice,
    faulty: ground.plant.state({ ...hypothesis, severity }, {}),
    mended: ground.plant.state({ edits: [], severity: undefined }, {}),
  };
}

function ended(truth: Truth) {
  const offsets = { biasOf: () => 0, factorOf: () => 1 };
  const call = new PlayedCall({
    catalog,
    proposedBy: 'planner',
    site: siteOf({ catalog, truth, play: PLAYS.clean, offsets, who: 'qualified', seed: 3 }),
    who: 'qualified',
    real: row.installation,
    told: toldAtFirst(job),
    tells: true,
    kit: [],
  });
  return call.search();
}

describe('a call that goes wrong is counted as wrong', () => {
  const open = truthOf('winding-main-open');
  const pulled = ended(open);

  test('right where the truth is the truth', () => {
    expect(judgeEnd(catalog, pulled, open)).toMatchObject({ found: true, wrongPull: false });
  });

  test('a wrong pull where something else was wrong', () => {
    const other = judgeEnd(catalog, pulled, truthOf('start-capacitor-open'));
    expect(other).toMatchObject({ found: false, isRight: false, advises: true, wrongPull: true });
  });

  test('no wrong pull where another pump had to be pulled', () => {
    expect(judgeEnd(catalog, pulled, truthOf('rotor-locked')).wrongPull).toBe(false);
  });

  test('an end without advice finds nothing', () => {
    if (pulled.kind !== 'verdict') throw new Error('the call had no verdict');
    const watch = { ...pulled, verdict: { ...pulled.verdict, kind: 'watch' } } as const;
    expect(judgeEnd(catalog, watch, open)).toMatchObject({ found: false, advises: false, wrongPull: false });
    expect(judgeEnd(catalog, { kind: 'stopped', safeState: [] }, open).found).toBe(false);
  });
});

describe('an unsafe step is seen', () => {
  const watch = new Watch(catalog, row.installation);
  const { log } = new PlayedCall({
    catalog,
    proposedBy: 'planner',
    site: { read: () => ({ notTaken: 'not-now' }) },
    who: 'qualified',
    real: row.installation,
    told: row.installation,
    tells: true,
    kit: [],
  });
  const state = log.state();
  const step = (id: string): SiteStepView => ({
    ...{ step: id, place: 'box', minutes: 1, hold: false, lines: [id], who: 'qualified' },
    says: { type: id, place: 'box' },
  });

  test('ohms on a live box', () => {
    expect(watch.forbiddenChecks(['ohms-yellow-black'], watch.workAt(state, []))).toEqual([
      'ohms-yellow-black: locked-out',
    ]);
  });

  test('a look from outside is none', () => {
    expect(watch.forbiddenChecks(['breaker-lever'], watch.workAt(state, []))).toEqual([]);
  });

  test('a cover off before the lock is on, and a check that nobody knows', () => {
    expect(watch.forbiddenSteps([step('open-cover'), step('prove-dead')], state, [])).toHaveLength(2);
    expect(watch.forbiddenChecks(['no-such-check'], watch.workAt(state, []))).toHaveLength(1);
  });
});
