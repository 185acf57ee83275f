// The draft of a family's sheet: kept on this machine until it is saved or thrown away.
import { useOpenShop } from '../../frame/open-shop.ts';
import { type Draft, useDraft } from '../../text/use-draft.ts';
import type { TypedSheet } from './typed-sheet.ts';

/** Null while nothing was changed. Of its own shop file: the demo's families are not the shop's. */
export function useSheetDraft(familyId: number): Draft<TypedSheet | null> {
  const { file } = useOpenShop();
  return useDraft<TypedSheet | null>(`spec sheet with pictures and clutches of family ${familyId} in ${file}`, null);
}
