// What the parts list shows and where one stands in it, kept for the way back from a part.
import type { Input } from '../../../app/contract/contract.ts';
import { useKeptView } from '../../frame/kept-view.ts';
import { useOpenShop } from '../../frame/open-shop.ts';

export type PartsFilter = Omit<Input<'stock.listParts'>, 'offset' | 'limit'>;

export type PartsView = {
  readonly filter: PartsFilter;
  /** The row one stands on, from 0. */
  readonly at: number;
};

const wholeList: PartsView = { filter: { text: '', kind: null, familyId: null, only: 'in use' }, at: 0 };

export function usePartsView() {
  const { file } = useOpenShop();
  const [view, change] = useKeptView<PartsView>(`parts of ${file}`, wholeList);
  return {
    ...view,
    /** A list filtered anew begins at its top. */
    narrow: (more: Partial<PartsFilter>) => change({ filter: { ...view.filter, ...more }, at: 0 }),
    standAt: (at: number) => change({ ...view, at }),
    /** Every part in use again. */
    widen: () => change(wholeList),
    isWhole: isWhole(view.filter),
  };
}

function isWhole({ text, kind, familyId, only }: PartsFilter): boolean {
  return text.trim() === '' && kind === null && familyId === null && only === 'in use';
}
