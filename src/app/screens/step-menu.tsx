import type { CaseScreenName } from '../hooks/route.ts';
import type { OpenCase } from '../hooks/use-case.ts';
import { useRoute } from '../hooks/use-route.ts';
import { Key } from '../parts/key.tsx';
import type { UiKey } from '../words/ui-key.ts';
import { useTexts } from '../words/use-texts.tsx';

const PLACES: readonly { screen: CaseScreenName; text: UiKey }[] = [
  { screen: 'suspects', text: 'menu-suspects' },
  { screen: 'trail', text: 'all-readings' },
  { screen: 'known', text: 'menu-known' },
  { screen: 'report', text: 'menu-report' },
];

/** The other sheets of a case, and the way back to the list. */
export function StepMenu({ open }: { open: OpenCase }) {
  const { say } = useTexts();
  const { go } = useRoute();
  return (
    <nav className="menu" aria-label={say('more')}>
      {PLACES.map(({ screen, text }) => (
        <Key key={screen} small onPress={() => go({ screen, case: open.id, about: [] })}>
          {say(text)}
        </Key>
      ))}
      <Key small onPress={() => go({ screen: 'cases' })}>
        {say('cases')}
      </Key>
    </nav>
  );
}
