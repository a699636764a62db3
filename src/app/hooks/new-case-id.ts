import { caseId } from '../../schema/case.ts';

/** Letters and digits that are not taken for one another when read aloud or off a screen. */
const CLEAR = '23456789abcdefghjkmnpqrstuvwxyz';
const NAME_MOST = 40;

/**
 * A free case id that can be read aloud: the site's name and four random signs.
 *
 * @param random bytes, at least four
 * @example
 * newCaseId('Larch Hollow', new Uint8Array([0, 1, 2, 3])) // => 'larch-hollow-2345'
 */
export function newCaseId(site: string, random: Uint8Array): string {
  const name = site
    .toLowerCase()
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, NAME_MOST)
    .replace(/^-+|-+$/g, '');
  const tail = [...random.slice(0, 4)].map((byte) => CLEAR[byte % CLEAR.length]).join('');
  return caseId.parse([name === '' ? 'call' : name, tail].join('-'));
}
