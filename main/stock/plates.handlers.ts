// Plates and cans, from the contract to their services.
import type { loosePlatesContract, platesContract } from '../../app/stock/plates.contract.ts';
import type { Handlers } from '../rpc/handler.ts';
import {
  addCan,
  addPiece,
  countCan,
  discardPiece,
  listLoose,
  lookOverPlate,
  moveInCan,
  putInCan,
  remeasurePiece,
} from './plates.service.ts';
import { addMeasured, takeBackMeasured } from './plates-box.service.ts';
import { getPlate, listOutlines, listPlates } from './plates-list.service.ts';
import { listPlateMoves } from './plates-moves.service.ts';
import { getReach } from './plates-reach.service.ts';

export const platesHandlers: Pick<Handlers<'stock'>, keyof typeof loosePlatesContract | keyof typeof platesContract> = {
  'stock.listLoose': (desk, input) => desk.shop().read((reading) => listLoose(reading, input)),
  'stock.addPiece': (desk, input) => desk.shop().write((writing, now) => addPiece(writing, now, input)),
  'stock.remeasurePiece': (desk, input) => desk.shop().write((writing, now) => remeasurePiece(writing, now, input)),
  'stock.discardPiece': (desk, input) => desk.shop().write((writing, now) => discardPiece(writing, now, input)),
  'stock.addCan': (desk, input) => desk.shop().write((writing, now) => addCan(writing, now, input)),
  'stock.moveInCan': (desk, input) => desk.shop().write((writing, now) => moveInCan(writing, now, input)),
  'stock.countCan': (desk, input) => desk.shop().write((writing, now) => countCan(writing, now, input)),
  'stock.listOutlines': (desk) => desk.shop().read((reading) => listOutlines(reading)),
  'stock.listPlates': (desk, input) => desk.shop().read((reading) => listPlates(reading, input)),
  'stock.listPlateMoves': (desk, input) => desk.shop().read((reading) => listPlateMoves(reading, input)),
  'stock.getPlate': (desk, input) => desk.shop().read((reading) => getPlate(reading, input)),
  'stock.addMeasured': (desk, input) => desk.shop().write((writing, now) => addMeasured(writing, now, input)),
  'stock.takeBackMeasured': (desk, input) => desk.shop().write((writing, now) => takeBackMeasured(writing, now, input)),
  'stock.lookOverPlate': (desk, input) => desk.shop().write((writing, now) => lookOverPlate(writing, now, input)),
  'stock.putInCan': (desk, input) => desk.shop().write((writing, now) => putInCan(writing, now, input)),
  'stock.getReach': (desk, input) => desk.shop().readApart((reading) => getReach(reading, input)),
};
