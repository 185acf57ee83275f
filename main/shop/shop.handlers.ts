// The shop, from the contract to the desk and the service.
import type { Handlers } from '../rpc/handler.ts';
import { fillDemoShop } from './demo/demo-shop.ts';
import type { Desk } from './desk.ts';
import { findAnything } from './find-anything.service.ts';
import { addPerson, changeSettings, fillShop, getShop, retirePerson } from './shop.service.ts';
import { ShopExport } from './shop-export.service.ts';

export const shopHandlers: Handlers<'shop'> = {
  'shop.getShop': async (desk) => {
    const drawers = { folder: desk.folder, hasShopFile: desk.hasOwnFile() };
    const shop = desk.openShopOrNone();
    if (!shop) return { open: false, ...drawers, trouble: troubleOf(desk) };
    return {
      open: true,
      ...drawers,
      file: shop.file,
      ...(await shop.read(getShop)),
    };
  },
  'shop.createShop': async (desk, input) => {
    await desk.makeOwn((shop) => shop.write((writing) => fillShop(writing, { ...input, isDemo: false })));
    return {};
  },
  'shop.openDemoShop': async (desk) => {
    await desk.openDemo(fillDemoShop);
    return {};
  },
  'shop.openOwnShop': async (desk) => {
    await desk.openOwn();
    return {};
  },
  'shop.changeSettings': (desk, input) => desk.shop().write((writing) => changeSettings(writing, input)),
  'shop.addPerson': (desk, input) => desk.shop().write((writing) => addPerson(writing, input)),
  'shop.retirePerson': (desk, input) => desk.shop().write((writing, now) => retirePerson(writing, now, input)),
  'shop.findAnything': (desk, input) => desk.shop().read((reading) => findAnything(reading, input)),
  'shop.exportEverything': (desk, input) => exportOf(desk).run(desk.shop(), input),
  'shop.getExport': async (desk) => exportOf(desk).progress(),
  'shop.stopExport': async (desk) => {
    exportOf(desk).stop();
    return {};
  },
};

const exports = new WeakMap<Desk, ShopExport>();

function exportOf(desk: Desk): ShopExport {
  const known = exports.get(desk) ?? new ShopExport();
  exports.set(desk, known);
  return known;
}

function troubleOf(desk: Desk) {
  const trouble = desk.trouble();
  return trouble ? { code: trouble.code, message: trouble.message, file: desk.ownFile() } : null;
}
