import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { describe, expect, test, vi } from 'vitest';
import { Pad } from '../../../src/app/parts/pad.tsx';
import { type PadUnit, type PadWords, rowsOf } from '../../../src/app/parts/pad-keys.ts';

const OHMS: readonly PadUnit[] = [
  { unit: 'ohm', sign: 'Ω', word: 'ohm', letter: 'O' },
  { unit: 'kohm', sign: 'kΩ', word: 'thousand', letter: 'K' },
  { unit: 'Mohm', sign: 'MΩ', word: 'million', letter: 'M' },
];

const WORDS: PadWords = {
  name: 'pad',
  enter: 'enter',
  backspace: 'erase',
  open: 'open',
  unstable: 'unstable',
  notTaken: 'cannot take it',
  unsafe: 'unsafe',
  refused: (why) => `refused: ${why}`,
};

interface Calls {
  onValue(value: number, unit: string): void;
  onOpen(): void;
  onUnstable(): void;
  onNotTaken(): void;
  onUnsafe(): void;
}

function Holder({ expected, calls }: { expected: string; calls: Calls }) {
  const [typed, setTyped] = useState('');
  return (
    <>
      <span data-testid="typed">{typed}</span>
      <input aria-label="elsewhere" />
      <Pad
        check="ohms"
        typed={typed}
        units={OHMS}
        expected={expected}
        words={WORDS}
        onType={setTyped}
        {...calls}
      />
    </>
  );
}

function setUp(expected = 'ohm') {
  const calls = {
    onValue: vi.fn(),
    onOpen: vi.fn(),
    onUnstable: vi.fn(),
    onNotTaken: vi.fn(),
    onUnsafe: vi.fn(),
  };
  const view = render(<Holder expected={expected} calls={calls} />);
  const typed = (): string => screen.getByTestId('typed').textContent ?? '';
  return { user: userEvent.setup(), calls, typed, ...view };
}

const key = (name: string): HTMLElement => screen.getByRole('button', { name });

describe('by hand', () => {
  test('digits, then the unit enters', async () => {
    const { user, calls } = setUp();
    for (const digit of ['4', '.', '7']) await user.click(key(digit));
    await user.click(key('kΩ thousand'));
    expect(calls.onValue).toHaveBeenCalledExactlyOnceWith(4.7, 'kohm');
  });
  test('backspace', async () => {
    const { user, typed } = setUp();
    await user.click(key('4'));
    await user.click(key('2'));
    await user.click(key('erase'));
    expect(typed()).toBe('4');
  });
  test('a unit without a number says so and enters nothing', async () => {
    const { user, calls } = setUp();
    await user.click(key('Ω ohm enter'));
    expect(calls.onValue).not.toHaveBeenCalled();
    expect(screen.getByRole('status')).toHaveTextContent('refused: empty');
  });
  test('what is no number', async () => {
    const { user, calls } = setUp();
    for (const name of ['open', 'unstable', 'cannot take it', 'unsafe']) await user.click(key(name));
    expect(calls.onOpen).toHaveBeenCalledOnce();
    expect(calls.onUnstable).toHaveBeenCalledOnce();
    expect(calls.onNotTaken).toHaveBeenCalledOnce();
    expect(calls.onUnsafe).toHaveBeenCalledOnce();
  });
});

describe('by keyboard', () => {
  test('digits, a comma, Backspace, and the letter of the unit', async () => {
    const { user, calls, typed } = setUp();
    await user.keyboard('12,56{Backspace}');
    expect(typed()).toBe('12.5');
    await user.keyboard('m');
    expect(calls.onValue).toHaveBeenCalledExactlyOnceWith(12.5, 'Mohm');
  });
  test('Enter is the expected unit', async () => {
    const { user, calls } = setUp('Mohm');
    await user.keyboard('30{Enter}');
    expect(calls.onValue).toHaveBeenCalledExactlyOnceWith(30, 'Mohm');
  });
  test('another letter is refused aloud; the next digit clears it', async () => {
    const { user, typed } = setUp();
    await user.keyboard('4x');
    expect(screen.getByRole('status')).toHaveTextContent('refused: letters');
    await user.keyboard('7');
    expect(screen.getByRole('status')).toBeEmptyDOMElement();
    expect(typed()).toBe('47');
  });
  test('S is unsafe', async () => {
    const { user, calls } = setUp();
    await user.keyboard('s');
    expect(calls.onUnsafe).toHaveBeenCalledOnce();
  });
  test('what is typed elsewhere is not typed here', async () => {
    const { user, typed, calls } = setUp();
    await user.type(screen.getByRole('textbox', { name: 'elsewhere' }), '12s');
    expect(typed()).toBe('');
    expect(calls.onUnsafe).not.toHaveBeenCalled();
  });
  test('a shortcut of the browser is left alone', async () => {
    const { user, typed } = setUp();
    await user.keyboard('{Control>}4{/Control}');
    expect(typed()).toBe('');
  });
  test('a pasted exponent is refused', async () => {
    const { user, typed } = setUp();
    await user.paste('1e999');
    expect(typed()).toBe('');
    expect(screen.getByRole('status')).toHaveTextContent('refused: too-large');
  });
});

describe('the units', () => {
  test('stand in one order, whichever is expected; the expected one is twice as high', () => {
    for (const expected of ['ohm', 'kohm', 'Mohm']) {
      const { container, unmount } = setUp(expected);
      const units = [...container.querySelectorAll('[data-unit]')];
      expect(units.map((unit) => unit.getAttribute('data-unit'))).toEqual(['ohm', 'kohm', 'Mohm']);
      expect(container.querySelector('.key-main')).toHaveAttribute('data-unit', expected);
      unmount();
    }
    expect(rowsOf(OHMS, 'kohm')).toEqual([1, 2, 1]);
    expect(rowsOf(OHMS.slice(0, 2), 'ohm')).toEqual([3, 1]);
    expect(rowsOf(OHMS.slice(0, 1), 'ohm')).toEqual([4]);
  });
});
