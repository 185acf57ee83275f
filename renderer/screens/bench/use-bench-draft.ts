// What is typed at the bench and not committed; a draft of the demo shop never shows in the shop's own.
import { useOpenShop } from '../../frame/open-shop.ts';
import { type Draft, useDraft } from '../../text/use-draft.ts';

export function useBenchDraft<T>(what: string, initial: T): Draft<T> {
  const { file } = useOpenShop();
  return useDraft(`${file}: ${what}`, initial);
}
