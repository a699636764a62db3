import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

/** Colours as they stand in the style sheet; contrast by the WCAG 2 formula. */
const text = readFileSync(new URL('../../../src/app/styles/tokens.css', import.meta.url), 'utf8');

function block(selector: string, inside?: string): Map<string, string> {
  const from = inside === undefined ? 0 : text.indexOf(inside);
  const start = text.indexOf(`${selector} {`, from);
  if (from < 0 || start < 0) throw new Error(`tokens: no block ${inside ?? ''} ${selector}`);
  const body = text.slice(text.indexOf('{', start) + 1, text.indexOf('}', start));
  return new Map(
    [...body.matchAll(/(--[\w-]+):\s*([^;]+);/g)].map(([, name = '', value = '']) => [name, value]),
  );
}

function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.03928 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

const light = block(':root');
const themes = {
  light,
  dark: block(':root[data-theme="dark"]'),
  contrast: block(':root[data-theme="contrast"]'),
};

describe('the formula', () => {
  test('black on white is 21', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  });
  test('a faint pair is caught', () => {
    expect(contrast('#bfc1b9', '#f4f2ea')).toBeLessThan(3);
  });
});

describe.each(Object.entries(themes))('%s', (name, tokens) => {
  const of = (token: string): string => tokens.get(token) ?? '';
  const least = name === 'contrast' ? 12 : 7;
  test.each(['--ink', '--ink2', '--accent'])('%s can be read on paper and sheet', (token) => {
    expect(contrast(of(token), of('--paper'))).toBeGreaterThanOrEqual(least);
    expect(contrast(of(token), of('--sheet'))).toBeGreaterThanOrEqual(least);
  });
  test('words on accent', () => {
    expect(contrast(of('--on-accent'), of('--accent'))).toBeGreaterThanOrEqual(7);
  });
  test('rules are seen', () => {
    expect(contrast(of('--rule'), of('--paper'))).toBeGreaterThanOrEqual(3);
  });
});

describe('a theme that is chosen and one that the system asks for', () => {
  test('dark is the same', () => {
    expect(block(':root:not([data-theme])', '(prefers-color-scheme: dark)')).toEqual(themes.dark);
  });
  test('high contrast is the same', () => {
    expect(block(':root:not([data-theme])', '(prefers-contrast: more)')).toEqual(themes.contrast);
  });
  test('each sets every colour', () => {
    const colours = [...light].filter(([, value]) => value.startsWith('#')).map(([token]) => token);
    expect([...themes.dark.keys()]).toEqual(expect.arrayContaining(colours));
    expect([...themes.contrast.keys()]).toEqual(expect.arrayContaining(colours));
  });
});
