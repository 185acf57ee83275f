// What the parts list shows and where one stands in it, kept while the window is open: back from a part is back there.
import { useState } from 'react';
import type { Input } from '../../../app/contract/contract.ts';
import { useOpenShop } from '../../frame/open-shop.ts';

export type PartsFilter = Omit<Input<'stock.listParts'>, 'offset' | 'limit'>;

export type PartsView = {
  readonly filter: PartsFilter;
  /** The row one stands on, from 0. */
  readonly at: number;
};

const wholeList: PartsView = { filter: { text: '', kind: null, familyId: null, only: 'in use' }, at: 0 };

/** By shop file: the demo's list is not the shop's. */
const kept = new Map<string, PartsView>();

export function usePartsView() {
  const { file } = useOpenShop();
  const [view, setView] = useState(kept.get(file) ?? wholeList);
  const change = (next: PartsView) => {
    kept.set(file, next);
    setView(next);
  };
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
