import { siteStep } from '../../../../src/schema/smaller.ts';
import { siteStepWords } from '../../../../src/schema/words.ts';

const STEPS = import.meta.glob('../../../../content/site-steps/*.json', { eager: true, import: 'default' });
const WORDS = import.meta.glob('../../../../content/words/en/site-steps/*.json', {
  eager: true,
  import: 'default',
});

/** Minutes and words of the site steps as they stand in content, by id. */
export function siteSteps(): { readonly minutes: Map<string, number>; readonly words: Map<string, string> } {
  const steps = Object.values(STEPS).map((file) => siteStep.parse(file));
  const words = Object.values(WORDS).map((file) => siteStepWords.parse(file));
  return {
    minutes: new Map(steps.map(({ id, minutes }) => [id, minutes])),
    words: new Map(words.map(({ id, ask, how, shows }) => [id, [ask, ...how, shows].join('\n')])),
  };
}
