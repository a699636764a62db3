/**
 * Where the person is, written in the address: `#/case/larch-hollow-4f7k/step`. A reload reads it
 * again, so the same screen comes back; nothing else remembers the place.
 */
export const CASE_SCREENS = [
  'seen',
  'known',
  'step',
  'judged',
  'reading',
  'suspects',
  'trail',
  'report',
] as const;
export type CaseScreenName = (typeof CASE_SCREENS)[number];

export type Route =
  | { readonly screen: 'cases' }
  | { readonly screen: 'start' }
  | {
      readonly screen: CaseScreenName;
      readonly case: string;
      /** What the screen is about: the checks judged, the reading to correct, the question asked. */
      readonly about: readonly string[];
    };

/**
 * @example
 * routeOf('#/case/a-1/judged/ohms-yellow-black+ohms-yellow-red').screen // => 'judged'
 */
export function routeOf(hash: string): Route {
  const [, area, caseId, screen, about] = hash.replace(/^#/, '').split('/');
  if (area === 'start') return { screen: 'start' };
  if (area !== 'case' || caseId === undefined || !/^[a-z0-9-]+$/.test(caseId)) return { screen: 'cases' };
  return {
    screen: CASE_SCREENS.find((one) => one === screen) ?? 'step',
    case: caseId,
    about: about === undefined || about === '' ? [] : about.split('+').map(decodeURIComponent),
  };
}

export function hashOf(route: Route): string {
  if (route.screen === 'cases') return '#/';
  if (route.screen === 'start') return '#/start';
  const about = route.about.length === 0 ? '' : `/${route.about.map(encodeURIComponent).join('+')}`;
  return `#/case/${route.case}/${route.screen}${about}`;
}
