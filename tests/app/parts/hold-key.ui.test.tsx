import { act, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { HoldKey } from '../../../src/app/parts/hold-key.tsx';
import { AGAIN_MILLISECONDS, HOLD_MILLISECONDS } from '../../../src/app/parts/use-hold.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

function setUp() {
  const onHeld = vi.fn();
  render(
    <HoldKey hint="press and hold" again="tap once more" onHeld={onHeld}>
      Locked
    </HoldKey>,
  );
  return { onHeld, key: screen.getByRole('button', { name: 'Locked' }) };
}

const pass = (milliseconds: number): void => act(() => void vi.advanceTimersByTime(milliseconds));

describe('a finger', () => {
  test('held to the end counts, once', () => {
    const { onHeld, key } = setUp();
    fireEvent.pointerDown(key);
    expect(key).toHaveAttribute('data-holding', 'true');
    pass(HOLD_MILLISECONDS - 1);
    expect(onHeld).not.toHaveBeenCalled();
    pass(1);
    pass(5000);
    expect(onHeld).toHaveBeenCalledOnce();
    expect(key).toHaveAttribute('data-holding', 'false');
  });
  test.each(['pointerUp', 'pointerLeave', 'pointerCancel', 'blur'] as const)(
    '%s before the end does nothing',
    (end) => {
      const { onHeld, key } = setUp();
      fireEvent.pointerDown(key);
      pass(HOLD_MILLISECONDS / 2);
      fireEvent[end](key);
      pass(5000);
      expect(onHeld).not.toHaveBeenCalled();
    },
  );
  test('a tap does nothing', () => {
    const { onHeld, key } = setUp();
    fireEvent.pointerDown(key);
    fireEvent.pointerUp(key);
    fireEvent.click(key, { detail: 1 });
    pass(5000);
    expect(onHeld).not.toHaveBeenCalled();
  });
});

describe.each(['Enter', ' '])('the key "%s"', (name) => {
  test('held to the end counts, repeats or not', () => {
    const { onHeld, key } = setUp();
    fireEvent.keyDown(key, { key: name });
    pass(HOLD_MILLISECONDS / 2);
    fireEvent.keyDown(key, { key: name, repeat: true });
    pass(HOLD_MILLISECONDS / 2);
    expect(onHeld).toHaveBeenCalledOnce();
  });
  test('let go early does nothing', () => {
    const { onHeld, key } = setUp();
    fireEvent.keyDown(key, { key: name });
    pass(HOLD_MILLISECONDS - 1);
    fireEvent.keyUp(key, { key: name });
    pass(5000);
    expect(onHeld).not.toHaveBeenCalled();
  });
});

describe('a screen reader, which cannot hold', () => {
  test('taps twice', () => {
    const { onHeld, key } = setUp();
    fireEvent.click(key, { detail: 0 });
    expect(onHeld).not.toHaveBeenCalled();
    expect(key).toHaveTextContent('tap once more');
    fireEvent.click(key, { detail: 0 });
    expect(onHeld).toHaveBeenCalledOnce();
  });
  test('the second tap comes too late', () => {
    const { onHeld, key } = setUp();
    fireEvent.click(key, { detail: 0 });
    pass(AGAIN_MILLISECONDS);
    fireEvent.click(key, { detail: 0 });
    expect(onHeld).not.toHaveBeenCalled();
  });
  test('hears how', () => {
    expect(setUp().key).toHaveAccessibleDescription('press and hold');
  });
});
