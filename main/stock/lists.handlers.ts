// Lists, files and labels, from the contract to their services.
import type { listsContract } from '../../app/stock/lists.contract.ts';
import type { Handlers } from '../rpc/handler.ts';
import { listLabelSizes, printLabels, saveLabelSize } from './labels.service.ts';
import { exportCsv, printPurchaseList } from './lists.service.ts';
import { importCsv, previewCsv } from './lists-import.service.ts';

export const listsHandlers: Pick<Handlers<'stock'>, keyof typeof listsContract> = {
  'stock.previewCsv': (desk, input) => desk.shop().read((reading) => previewCsv(reading, input)),
  'stock.importCsv': (desk, input) => desk.shop().write((writing, now) => importCsv(writing, now, input)),
  'stock.exportCsv': (desk, input) => exportCsv(desk.shop(), input),
  'stock.printPurchaseList': (desk, input) => printPurchaseList(desk.shop(), input),
  'stock.listLabelSizes': (desk) => desk.shop().read(listLabelSizes),
  'stock.saveLabelSize': (desk, input) => desk.shop().write((writing) => saveLabelSize(writing, input)),
  'stock.printLabels': (desk, input) => printLabels(desk.shop(), input),
};
