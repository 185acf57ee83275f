// A key that saves one list of the stock room as a CSV file.
import type { CsvExport } from '../../../app/stock/lists.contract.ts';
import { call } from '../../rpc/client.ts';
import { SaveKey } from './SaveKey.tsx';

export function ExportKey({ what, children }: { what: CsvExport; children: string }) {
  return <SaveKey get={() => call('stock.exportCsv', { what })}>{children}</SaveKey>;
}
