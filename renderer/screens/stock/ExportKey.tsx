// A key that saves one list of the stock room as a CSV file.
import type { CsvExport } from '../../../app/stock/lists.contract.ts';
import { SaveKey } from '../../frame/SaveKey.tsx';
import { call } from '../../rpc/client.ts';

export function ExportKey({ what, children }: { what: CsvExport; children: string }) {
  return <SaveKey get={() => call('stock.exportCsv', { what })}>{children}</SaveKey>;
}
