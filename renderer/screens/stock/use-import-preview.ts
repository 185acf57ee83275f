// What a file would do, asked a window of rows at a time.
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { Input, Output } from '../../../app/contract/contract.ts';
import type { CsvFate, CsvTarget } from '../../../app/stock/lists.contract.ts';
import { call } from '../../rpc/client.ts';
import type { Read } from '../../rpc/use-read.ts';
import type { SourceText } from './import-source-text.ts';

export type ImportChoice = {
  readonly target: CsvTarget;
  readonly delimiter: Input<'stock.previewCsv'>['delimiter'];
  readonly mapping: readonly (string | null)[] | null;
};
export type Preview = Output<'stock.previewCsv'> & {
  /** Of the first row, among those shown. */
  readonly offset: number;
  readonly show: CsvFate | 'all';
};

/** Rows are asked for by the hundred, two hundreds at once, so that a screenful always lies in what was asked. */
export const windowStep = 100;
export const windowLength = 2 * windowStep;

/** Known to the cache by the key of the source: the text itself may be millions of characters. */
export function useImportPreview(
  { key, text }: SourceText,
  choice: ImportChoice,
  window: { readonly show: CsvFate | 'all'; readonly offset: number },
): Read<Preview> {
  const { target, delimiter, mapping } = choice;
  return useQuery<Preview, Error>({
    queryKey: ['stock.previewCsv', key, choice, window],
    queryFn: async () => {
      const { show, offset } = window;
      const asked = { target, delimiter, mapping: mapping && [...mapping], text, ...window, limit: windowLength };
      return { ...(await call('stock.previewCsv', asked)), offset, show };
    },
    placeholderData: keepPreviousData,
  });
}
