import type { Catalog, Problem } from '../../catalog/catalog.ts';
import { CASE_BYTES_MOST, readCaseText, tooLarge, writeCaseText } from '../../records/case-file.ts';
import type { CaseStore } from '../../records/store.ts';

/** What came of opening a case file. */
export type Imported =
  | { readonly kind: 'joined'; readonly case: string; readonly added: number; readonly differing: number }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

/** Hands the case file to the browser's downloads. */
export async function saveCase(store: CaseStore, caseId: string): Promise<void> {
  const text = writeCaseText(await store.read(caseId));
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = `${caseId}.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** The size is looked at before a byte is read; what is no case is refused with its problems. */
export async function openCaseFile(store: CaseStore, catalog: Catalog, file: Blob): Promise<Imported> {
  if (file.size > CASE_BYTES_MOST) return { kind: 'refused', problems: [tooLarge()] };
  const read = readCaseText(await file.text(), { known: catalog });
  if ('problems' in read) return { kind: 'refused', problems: read.problems };
  const { added, conflicts } = await store.takeIn(read.ok);
  store.release(read.ok.case);
  return { kind: 'joined', case: read.ok.case, added, differing: conflicts.length };
}

/** Every kept case, one file each: the way out when nothing else works. */
export async function saveAll(store: CaseStore): Promise<void> {
  for (const one of await store.list()) await saveCase(store, one.case);
}
