import { describe, expect, test } from 'vitest';
import { ask, claims, clears, isHere, tree } from '../../../machines/procedures/ask.ts';
import { drawTree } from '../../../machines/procedures/drawing.ts';
import { foldProcedure } from '../../../machines/procedures/fold.ts';
import { given } from './support/answers.ts';

const garden = tree.createMachine({
  id: 'garden',
  initial: 'hose',
  states: {
    hose: ask('hose', { wet: 'tap', dry: 'pipe', 'not-taken': 'pipe' }),
    tap: isHere('tap', 'pipe', 'fine'),
    pipe: ask('pipe', { whole: 'fine', split: 'burst', 'not-taken': 'fine' }),
    burst: claims('pipe-split'),
    fine: clears('garden'),
  },
});

const drawnAfter = (said: Record<string, string>) =>
  drawTree(garden, foldProcedure(garden, given(said)).path);

describe('a drawn tree', () => {
  test('joins outcomes that lead to the same state', () => {
    const { edges } = drawnAfter({});
    expect(edges.map(({ outcomes, to }) => [to, outcomes.join(' ')])).toEqual([
      ['pipe', 'unstable not-here dry not-taken'],
      ['tap', 'wet'],
    ]);
  });

  test('draws a state under the edge that was taken and names it elsewhere', () => {
    const { edges, lit, here } = drawnAfter({ hose: 'wet' });
    expect([lit, here]).toEqual([true, false]);
    const [toPipe, toTap] = edges;
    expect([toPipe?.lit, toPipe?.drawn]).toEqual([false, undefined]);
    expect(toTap?.lit).toBe(true);
    const pipe = toTap?.drawn?.edges.find((edge) => edge.to === 'pipe');
    expect(toTap?.drawn?.fork).toBe('tap');
    expect(pipe?.lit).toBe(true);
    expect(pipe?.drawn).toMatchObject({ state: 'pipe', check: 'pipe', here: true, lit: true });
  });

  test('shows the ending that was reached', () => {
    const pipe = drawnAfter({ hose: 'dry', pipe: 'split' }).edges.find((edge) => edge.to === 'pipe')?.drawn;
    const burst = pipe?.edges.find((edge) => edge.to === 'burst')?.drawn;
    expect(burst).toMatchObject({ ends: { claims: ['pipe-split'] }, here: true, lit: true, edges: [] });
  });
});
