// Photos, from the contract to the service.
import type { Handlers } from '../rpc/handler.ts';
import { readFromFolder } from './phone-folder.ts';
import {
  addPhoto,
  describePhoto,
  filesOfPhoto,
  getFolder,
  keepJpeg,
  listPhotos,
  readJpeg,
  removePhoto,
  watchedFolder,
  watchFolder,
} from './photos.service.ts';

export const photosHandlers: Handlers<'photos'> = {
  'photos.listPhotos': (desk, input) => desk.shop().read((reading) => listPhotos(reading, input)),
  'photos.getPhoto': async (desk, { photoId, size }) => {
    const files = await desk.shop().read((reading) => filesOfPhoto(reading, photoId));
    return { jpegBase64: readJpeg(desk.shop().file, files[size]) };
  },
  'photos.addPhoto': (desk, { jpegBase64, smallBase64, ...input }) => {
    const shop = desk.shop();
    const picture = keepJpeg(shop.file, jpegBase64);
    const small = keepJpeg(shop.file, smallBase64);
    return shop.write((writing, now) => addPhoto(writing, now, { ...input, picture, small }));
  },
  'photos.describePhoto': (desk, input) => desk.shop().write((writing) => describePhoto(writing, input)),
  'photos.removePhoto': (desk, input) => desk.shop().write((writing, now) => removePhoto(writing, now, input)),
  'photos.getFolder': (desk) => desk.shop().read((reading) => getFolder(reading)),
  'photos.readFromFolder': async (desk, { name }) => {
    const folder = await desk.shop().read((reading) => watchedFolder(reading));
    return { base64: readFromFolder(folder, name).toString('base64') };
  },
  'photos.watchFolder': (desk, input) => desk.shop().write((writing) => watchFolder(writing, input)),
};
