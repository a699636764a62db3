import { render, screen } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import { ConductorLine } from '../../../src/app/picture/conductor-line.tsx';
import { Picture } from '../../../src/app/picture/picture.tsx';
import { boxes, boxNamed, LIVE, piecesOf, provedAt, WORDS } from './support/scenes.ts';

describe('the picture', () => {
  test.each(boxes.map((one) => [one.id, one] as const))('draws %s', (_, one) => {
    const focus = one.family === 'no-box' ? 'switch' : 'box';
    const { container } = render(
      <Picture pieces={piecesOf(one)} focus={focus} site={LIVE} words={WORDS} spoken="the installation" />,
    );
    expect(screen.getByRole('img', { name: 'the installation' })).toBeVisible();
    expect(container.querySelector(`[data-frame="${focus}"]`)).not.toBeNull();
    const drawn = new Set(
      [...container.querySelectorAll('[data-symbol]')].map((one) => one.getAttribute('data-symbol')),
    );
    const symbols = piecesOf(one).find(({ sheet }) => sheet === focus)?.parts ?? [];
    const expected = symbols.filter(
      ({ kind }) => kind.startsWith('capacitor') || kind.endsWith('-coil') || kind === 'switch-pole',
    );
    for (const { id } of expected) expect([...drawn]).toContain(id);
  });
  test('thorns on what is live, none where it was proved dead', () => {
    const pieces = piecesOf(boxNamed('start-and-run-no-overload'));
    const thorned = (container: HTMLElement): string[] =>
      [...container.querySelectorAll('.thorns')].map(
        (one) => one.parentElement?.getAttribute('data-wire') ?? '',
      );
    const live = render(<Picture pieces={pieces} focus="box" site={LIVE} words={WORDS} spoken="a" />);
    expect(thorned(live.container)).toEqual(
      expect.arrayContaining(['run.yellow 0', 'box.wire-tap 0', 'service service.L1']),
    );
    live.unmount();
    const proved = render(
      <Picture pieces={pieces} focus="box" site={provedAt('box')} words={WORDS} spoken="a" />,
    );
    const still = thorned(proved.container);
    expect(still).toContain('service service.L1');
    expect(still).toContain('switch.pole-1 0');
    expect(still.filter((id) => id.startsWith('box.') || id.startsWith('run.'))).toEqual([]);
    expect(proved.container.querySelector('[data-frame="box"]')).toHaveAttribute('data-proved', 'true');
  });
  test('LIFTED leads part from their terminals', () => {
    const pieces = piecesOf(boxNamed('start-and-run-no-overload'));
    const site = provedAt('box', { leads: 'lifted' });
    const { container } = render(
      <Picture pieces={pieces} focus="box" site={site} words={WORDS} spoken="a" />,
    );
    expect(screen.getByText('LIFTED')).toBeVisible();
    expect(container.querySelector('[data-wire^="box.lead-"]')).toBeNull();
  });
  test('the legend names the points in order', () => {
    const pieces = piecesOf(boxNamed('start-and-run-no-overload'));
    render(
      <Picture
        pieces={pieces}
        focus="box"
        site={LIVE}
        at={{ between: ['lead.Y', 'lead.B'] }}
        unit="Ω"
        words={WORDS}
        points={['yellow', 'black']}
        spoken="a"
      />,
    );
    expect(screen.getAllByRole('listitem').map((one) => one.textContent)).toEqual(['1 yellow', '2 black']);
    expect(screen.getByText('Ω')).toBeVisible();
  });
});

describe('the conductor', () => {
  test('rings the part at fault and names it', () => {
    const { container } = render(
      <ConductorLine
        spoken="yellow, the splice reads 2.0 ohms"
        conductor={{
          lead: 'yellow',
          ringed: 'splice',
          ends: { from: 'box', to: 'motor' },
          parts: [
            { id: 'run', kind: 'length', name: 'buried run', amount: '0.2 Ω' },
            { id: 'splice', kind: 'joint', name: 'well-head splice', amount: '2.0 Ω' },
            { id: 'drop', kind: 'length', name: 'drop cable', amount: '0.3 Ω' },
          ],
        }}
      />,
    );
    expect(screen.getByRole('img', { name: 'yellow, the splice reads 2.0 ohms' })).toBeVisible();
    expect(screen.getByText('well-head splice: 2.0 Ω')).toBeVisible();
    expect(container.querySelectorAll('circle')).toHaveLength(2);
  });
});
