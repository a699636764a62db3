import { expect, test } from 'vitest';
import { hashOf, routeOf } from '../../../src/app/hooks/route.ts';

test.each([
  ['#/', { screen: 'cases' }],
  ['', { screen: 'cases' }],
  ['#/start', { screen: 'start' }],
  ['#/case/larch-hollow-2345', { screen: 'step', case: 'larch-hollow-2345', about: [] }],
  ['#/case/larch-hollow-2345/known/box', { screen: 'known', case: 'larch-hollow-2345', about: ['box'] }],
  [
    '#/case/a-1/judged/ohms-yellow-black+ohms-yellow-red',
    { screen: 'judged', case: 'a-1', about: ['ohms-yellow-black', 'ohms-yellow-red'] },
  ],
])('%s is a place', (hash, route) => {
  expect(routeOf(hash)).toEqual(route);
});

test('a place that is written is read back as it was', () => {
  const route = { screen: 'judged', case: 'a-1', about: ['one', 'two'] } as const;
  expect(routeOf(hashOf(route))).toEqual(route);
});

test.each(['#/case/', '#/case/UPPER', '#/case/../..', '#/nowhere'])(
  '%s leads to the list of cases',
  (hash) => {
    expect(routeOf(hash)).toEqual({ screen: 'cases' });
  },
);

test('an unknown screen of a case is its step', () => {
  expect(routeOf('#/case/a-1/elsewhere')).toMatchObject({ screen: 'step' });
});
