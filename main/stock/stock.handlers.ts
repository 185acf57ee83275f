// Stock, from the contract to the service.
import type { Handlers } from '../rpc/handler.ts';
import { listsHandlers } from './lists.handlers.ts';
import { partsHandlers } from './parts.handlers.ts';
import { addCan, addPiece, countCan, discardPiece, listLoose, remeasurePiece } from './stock.service.ts';
import { tracingHandlers } from './tracing.handlers.ts';

export const stockHandlers: Handlers<'stock'> = {
  ...partsHandlers,
  ...listsHandlers,
  ...tracingHandlers,
  'stock.listLoose': (desk, input) => desk.shop().read((reading) => listLoose(reading, input)),
  'stock.addPiece': (desk, input) => desk.shop().write((writing, now) => addPiece(writing, now, input)),
  'stock.remeasurePiece': (desk, input) => desk.shop().write((writing, now) => remeasurePiece(writing, now, input)),
  'stock.discardPiece': (desk, input) => desk.shop().write((writing, now) => discardPiece(writing, now, input)),
  'stock.addCan': (desk, input) => desk.shop().write((writing, now) => addCan(writing, now, input)),
  'stock.countCan': (desk, input) => desk.shop().write((writing, now) => countCan(writing, now, input)),
};
