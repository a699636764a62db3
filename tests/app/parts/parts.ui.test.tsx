import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import { ChoiceKeys } from '../../../src/app/parts/choice-keys.tsx';
import { Key } from '../../../src/app/parts/key.tsx';
import { LeadChip } from '../../../src/app/parts/lead-chip.tsx';
import { OutcomeSign } from '../../../src/app/parts/outcome-sign.tsx';
import { PlumbLine } from '../../../src/app/parts/plumb-line.tsx';
import { ReadingBoxes } from '../../../src/app/parts/reading-boxes.tsx';
import { Strip } from '../../../src/app/parts/strip.tsx';
import { WindowScale, type WindowWords } from '../../../src/app/parts/window-scale.tsx';
import { windowOf } from './support/windows.ts';

const nothing = (): void => undefined;

describe('the key', () => {
  test('says whether it is chosen', () => {
    render(
      <>
        <Key chosen onPress={nothing}>
          on
        </Key>
        <Key chosen={false} onPress={nothing}>
          off
        </Key>
        <Key onPress={nothing}>go</Key>
      </>,
    );
    expect(screen.getByRole('button', { name: 'on' })).toHaveAttribute('aria-pressed', 'true');
    expect(screen.getByRole('button', { name: 'off' })).toHaveAttribute('aria-pressed', 'false');
    expect(screen.getByRole('button', { name: 'go' })).not.toHaveAttribute('aria-pressed');
  });
  test('does nothing while it is not to be pressed', async () => {
    const onPress = vi.fn();
    render(
      <Key disabled onPress={onPress}>
        go
      </Key>,
    );
    await userEvent.click(screen.getByRole('button'));
    expect(onPress).not.toHaveBeenCalled();
  });
});

describe('the strip', () => {
  test.each(['live', 'locked', 'not-bled', 'proved'] as const)(
    '%s: words, its own edge, and STOP',
    async (word) => {
      const onStop = vi.fn();
      const { container } = render(
        <Strip word={word} title="STATE" line="and more" stopText="STOP" onStop={onStop} />,
      );
      expect(within(screen.getByRole('status')).getByText('STATE')).toBeVisible();
      expect(screen.getByText('and more')).toBeVisible();
      expect(container.querySelector('.strip-edge rect')).toHaveAttribute('fill', `url(#strip-edge-${word})`);
      expect(container.querySelector(`#strip-edge-${word}`)).not.toBeNull();
      await userEvent.click(screen.getByRole('button', { name: 'STOP' }));
      expect(onStop).toHaveBeenCalledOnce();
    },
  );
  test('no two states share a sign', () => {
    const signs = (['live', 'locked', 'not-bled', 'proved'] as const).map((word) => {
      const { container, unmount } = render(
        <Strip word={word} title="" line="" stopText="" onStop={nothing} />,
      );
      const sign = container.querySelector('.strip-sign')?.innerHTML;
      unmount();
      return sign;
    });
    expect(new Set(signs).size).toBe(4);
  });
});

describe('signs', () => {
  test('each outcome has its own shape; an answer has the ring', () => {
    const names = [
      'as-expected',
      'high',
      'low',
      'none',
      'open',
      'unstable',
      'not-taken',
      'unsafe',
      'contradiction',
    ];
    const shapes = [...names, 'silent-with-pressure'].map((outcome) => {
      const { container, unmount } = render(<OutcomeSign outcome={outcome} />);
      const shape = container.innerHTML.replace(/data-outcome="[^"]*"/, '');
      unmount();
      return shape;
    });
    expect(new Set(shapes).size).toBe(names.length + 1);
  });
  test('leads differ by more than colour', () => {
    const marks = (['yellow', 'black', 'red'] as const).map((lead) => {
      const { container, unmount } = render(<LeadChip lead={lead} />);
      const count = container.querySelectorAll('path').length;
      const dash = container.querySelector('[stroke-dasharray]')?.getAttribute('stroke-dasharray');
      unmount();
      return `${count} ${dash}`;
    });
    expect(marks).toEqual(['2 undefined', '2 undefined', '3 3 7']);
  });
});

const WINDOW_WORDS: WindowWords = {
  title: 'Expect, ohms',
  sentence: 'Expect 2.4 to 3.1 ohms',
  open: 'open',
  answer: 'made',
  unknown: 'No window: motor power unknown',
  over: 'over',
  upTo: 'up to',
  part: (name) => `part ${name}`,
  fromMemory: 'from memory',
};

describe('the window', () => {
  test('is told in words, its parts with what they add', () => {
    const window = windowOf({
      low: 2.4,
      high: 3.1,
      parts: [
        { name: 'table', low: 1.73, high: 2.07, from: [{ source: 'a', where: 'b', mark: 'memory' }] },
        { name: 'meter', low: -0.08, high: 0.08, from: [] },
      ],
    });
    render(<WindowScale window={window} words={WINDOW_WORDS} />);
    expect(screen.getByRole('region', { name: 'Expect 2.4 to 3.1 ohms' })).toBeVisible();
    const [table, meter] = screen.getAllByRole('listitem');
    expect(table).toHaveTextContent('part table 1.9 ◇from memory');
    expect(meter).toHaveTextContent('part meter ±0.08');
  });
  test.each([
    ['open', { kind: 'open' }, 'open'],
    ['answer', { kind: 'answer', answer: 'made' }, 'made'],
    ['unknown', { kind: 'unknown' }, 'No window: motor power unknown'],
    ['over', { low: 2e6 }, 'over 2'],
    ['up to', { high: 0.1, unit: 'V' }, 'up to 0.1'],
    ['a range without ends', {}, 'No window: motor power unknown'],
  ] as const)('%s', (_, over, text) => {
    const { container } = render(<WindowScale window={windowOf(over)} words={WINDOW_WORDS} />);
    expect(container).toHaveTextContent(text);
  });
});

describe('the boxes', () => {
  test('the active one is said to be so; an empty one shows what is expected', async () => {
    const onChoose = vi.fn();
    render(
      <ReadingBoxes
        name="readings"
        activeWord="typed into"
        onChoose={onChoose}
        boxes={[
          { id: 'a', name: 'Y–B', leads: ['yellow', 'black'], value: '4.7', active: true },
          { id: 'b', name: 'Y–R', expected: '8.1–10.3', active: false },
          { id: 'c', name: 'B–R', value: '11.1', sign: 'Ω', expected: 'hidden', active: false },
        ]}
      />,
    );
    const [first, second, third] = screen.getAllByRole('button');
    expect(first).toHaveAttribute('aria-current', 'true');
    expect(first).toHaveTextContent('Y–Btyped into4.7');
    expect(second).toHaveTextContent('8.1–10.3');
    expect(third).toHaveTextContent('B–R11.1Ω');
    if (second !== undefined) await userEvent.click(second);
    expect(onChoose).toHaveBeenCalledExactlyOnceWith('b');
  });
});

describe('the answers', () => {
  test('keys with three signs where they are known', async () => {
    const onChoose = vi.fn();
    render(
      <ChoiceKeys
        check="what-is-seen"
        legend="What is seen?"
        chosen="works-now"
        choices={[
          { id: 'hums-or-trips', text: 'Hums' },
          { id: 'works-now', text: 'Works' },
        ]}
        onChoose={onChoose}
      />,
    );
    expect(screen.getByRole('group', { name: 'What is seen?' })).toBeVisible();
    const hums = screen.getByRole('button', { name: 'Hums' });
    expect(hums.querySelectorAll('.choice-signs > svg')).toHaveLength(3);
    expect(screen.getByRole('button', { name: 'Works' })).toHaveAttribute('aria-pressed', 'true');
    await userEvent.click(hums);
    expect(onChoose).toHaveBeenCalledExactlyOnceWith('hums-or-trips');
  });
  test('words alone where they are not, and a way past', async () => {
    const onPress = vi.fn();
    const { container } = render(
      <ChoiceKeys
        check="look-wellhead"
        legend="Well head"
        choices={[{ id: 'dry', text: 'Dry' }]}
        onChoose={nothing}
        notTaken={{ text: 'cannot take it', onPress }}
      />,
    );
    expect(container.querySelector('.choice-signs')).toBeNull();
    await userEvent.click(screen.getByRole('button', { name: 'cannot take it' }));
    expect(onPress).toHaveBeenCalledOnce();
  });
});

describe('the plumb line', () => {
  test('is a table: a column a reading, a row a suspect, hit bars solid', () => {
    const { container } = render(
      <PlumbLine
        words={{ caption: 'Readings', read: 'read', expected: 'expected', suspects: 'suspects' }}
        columns={[
          {
            id: 'a',
            name: 'Y–B',
            outcome: 'high',
            outcomeWord: 'high',
            read: '4.7',
            sign: 'Ω',
            amount: 4.7,
            window: { low: 2.4, high: 3.1 },
            expected: '2.4–3.1',
          },
          {
            id: 'b',
            name: 'Y–R',
            outcome: 'open',
            outcomeWord: 'open',
            read: 'open',
            window: { low: 8, high: 10 },
            expected: '8–10',
          },
        ]}
        rows={[
          {
            id: 'one',
            name: 'Splice high',
            state: 'leading',
            stateWord: 'leads',
            bars: [{ low: 3, high: 6 }, 'open'],
          },
          {
            id: 'two',
            name: 'Sound',
            state: 'ruled-out',
            stateWord: 'ruled out',
            bars: [
              { low: 2.4, high: 3.1 },
              { low: 8, high: 10 },
            ],
          },
        ]}
      />,
    );
    expect(screen.getByRole('table', { name: 'Readings' })).toBeVisible();
    expect(screen.getByRole('columnheader', { name: /Y–B.*4.7Ω.*2.4–3.1.*high/ })).toBeVisible();
    expect(screen.getByRole('rowheader', { name: 'Splice high leads' })).toBeVisible();
    const fills = [...container.querySelectorAll('tbody rect[stroke]')].map((bar) =>
      bar.getAttribute('fill'),
    );
    expect(fills).toEqual(['var(--ink)', 'var(--paper)', 'var(--paper)']);
    expect(container.querySelectorAll('.plumb-line')).toHaveLength(2);
  });
});
