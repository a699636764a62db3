import { saveCase } from '../hooks/case-files.ts';
import { useServices } from '../hooks/services.tsx';
import { Key } from '../parts/key.tsx';
import { useTexts } from '../words/use-texts.tsx';

/** Puts the case file where the device keeps its downloads. */
export function SaveKey({ caseId }: { caseId: string }) {
  const { say } = useTexts();
  const { store } = useServices();
  return <Key onPress={() => void saveCase(store, caseId)}>{say('save-file')}</Key>;
}
