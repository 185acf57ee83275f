// Who a part is bought from: somebody named before is offered as one types.
import { SuggestField } from '../../components/SuggestField.tsx';
import { useRead } from '../../rpc/use-read.ts';

export function SupplierEntry({ value, onChange }: { value: string; onChange: (supplier: string) => void }) {
  const suppliers = useRead('stock.listSuppliers', {});
  const text = value.trim().toLowerCase();
  const known = suppliers.data ?? [];
  const fitting = known.filter((name) => text !== '' && name.toLowerCase().includes(text) && name !== value);
  return (
    <SuggestField
      label="Supplier"
      value={value}
      onChange={onChange}
      suggestions={fitting.map((name) => ({ id: known.indexOf(name), words: name, note: '' }))}
      onTake={(id) => onChange(known[id] ?? value)}
    />
  );
}
