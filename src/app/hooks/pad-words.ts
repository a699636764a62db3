import { signOf } from '../format/unit.ts';
import type { PadUnit, PadWords } from '../parts/pad-keys.ts';
import type { Refusal } from '../parts/typed.ts';
import type { Texts } from '../words/texts.ts';
import type { UiKey } from '../words/ui-key.ts';

/** Letters of a keyboard that stand for a unit key. */
const LETTERS: Readonly<Record<string, string>> = {
  ohm: 'O',
  kohm: 'K',
  Mohm: 'M',
  V: 'V',
  A: 'A',
  uF: 'U',
  W: 'W',
};

export function padUnits(texts: Texts, units: readonly string[]): PadUnit[] {
  return units.map((unit) => {
    const letter = LETTERS[unit];
    return {
      unit,
      sign: signOf(unit),
      word: texts.name('unit-words', unit),
      ...(letter === undefined ? {} : { letter }),
    };
  });
}

const REFUSED: Readonly<Record<Refusal, UiKey>> = {
  letters: 'pad-letters',
  'second-point': 'pad-second-point',
  'too-many-digits': 'pad-too-many-digits',
  'too-large': 'pad-too-large',
  empty: 'pad-empty',
};

/** Over-range is open for ohms, and a time that never ends for a watch; volts and psi have none. */
function openWord({ say, name }: Texts, quantity: string): string | undefined {
  if (quantity === 'time') return say('pad-never-ends');
  return quantity === 'resistance' || quantity === 'capacitance' ? name('outcomes', 'open') : undefined;
}

export function padWords(texts: Texts, quantity: string): PadWords {
  const { say, name } = texts;
  return {
    name: say('pad'),
    enter: say('pad-enter'),
    backspace: say('pad-backspace'),
    open: openWord(texts, quantity),
    unstable: name('outcomes', 'unstable'),
    notTaken: say('cannot-take'),
    unsafe: say('unsafe'),
    refused: (why) => say(REFUSED[why]),
  };
}
