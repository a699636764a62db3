/**
 * The few words that must not depend on content, because they say that the content cannot be read.
 * In English only: no language is there to choose from.
 */
export const FAILURE = {
  title: 'No advice: Ohmwell’s own tables are damaged',
  advice: 'Do not rely on anything shown before. Work by your own rules and make the site safe first.',
  kept: 'Your readings are still stored on this device.',
  save: 'Save all case files',
  opening: 'Ohmwell',
} as const;
