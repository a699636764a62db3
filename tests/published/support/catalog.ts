import { catalogFrom } from '../../../src/proof/content.ts';

/** The real content, which is what published values are held against. */
const built = catalogFrom('content');
if ('problems' in built) throw new Error('the content has problems: npm run check:content');
export const catalog = built.catalog;
