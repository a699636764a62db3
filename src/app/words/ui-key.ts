import type uiCall from '../../../content/words/en/names/ui-call.json';
import type uiEndings from '../../../content/words/en/names/ui-endings.json';
import type uiKnown from '../../../content/words/en/names/ui-known.json';
import type uiReport from '../../../content/words/en/names/ui-report.json';
import type uiShell from '../../../content/words/en/names/ui-shell.json';

/** Names of the texts that belong to the screens: a missing one is found by the compiler. */
export type UiKey =
  | keyof (typeof uiShell)['texts']
  | keyof (typeof uiCall)['texts']
  | keyof (typeof uiKnown)['texts']
  | keyof (typeof uiEndings)['texts']
  | keyof (typeof uiReport)['texts'];
