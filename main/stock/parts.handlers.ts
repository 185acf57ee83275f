// Parts, batches, movements and cores, from the contract to their services.
import type { partsContract } from '../../app/stock/parts.contract.ts';
import type { Handlers } from '../rpc/handler.ts';
import { listCores, openCore, settleCore } from './cores.service.ts';
import {
  countBatch,
  listPartsOfJob,
  openKit,
  pullForJob,
  receiveBatch,
  returnFromJob,
  scrapFromBatch,
} from './ledger.service.ts';
import { listSuppliers } from './parts.repository.ts';
import { getPart, listParts, listReorder, retirePart, savePart } from './parts.service.ts';

export const partsHandlers: Pick<Handlers<'stock'>, keyof typeof partsContract> = {
  'stock.listParts': (desk, input) => desk.shop().read((reading) => listParts(reading, input)),
  'stock.listSuppliers': (desk) => desk.shop().read((reading) => listSuppliers(reading)),
  'stock.getPart': (desk, input) => desk.shop().read((reading) => getPart(reading, input)),
  'stock.savePart': (desk, input) => desk.shop().write((writing) => savePart(writing, input)),
  'stock.retirePart': (desk, input) => desk.shop().write((writing) => retirePart(writing, input)),
  'stock.receiveBatch': (desk, input) => desk.shop().write((writing, now) => receiveBatch(writing, now, input)),
  'stock.openKit': (desk, input) => desk.shop().write((writing, now) => openKit(writing, now, input)),
  'stock.pullForJob': (desk, input) => desk.shop().write((writing, now) => pullForJob(writing, now, input)),
  'stock.returnFromJob': (desk, input) => desk.shop().write((writing, now) => returnFromJob(writing, now, input)),
  'stock.scrapFromBatch': (desk, input) => desk.shop().write((writing, now) => scrapFromBatch(writing, now, input)),
  'stock.countBatch': (desk, input) => desk.shop().write((writing, now) => countBatch(writing, now, input)),
  'stock.listPartsOfJob': (desk, input) => desk.shop().read((reading) => listPartsOfJob(reading, input)),
  'stock.listReorder': (desk) => desk.shop().read((reading) => listReorder(reading)),
  'stock.listCores': (desk, input) => desk.shop().read((reading) => listCores(reading, desk.shop().clock(), input)),
  'stock.openCore': (desk, input) => desk.shop().write((writing, now) => openCore(writing, now, input)),
  'stock.settleCore': (desk, input) => desk.shop().write((writing, now) => settleCore(writing, now, input)),
};
