// Specs, from the contract to the service.
import { isJpegKept, keepJpeg, pictureOfPhoto, readJpeg } from '../photos/photos.service.ts';
import type { Handlers } from '../rpc/handler.ts';
import { personAtWork } from '../shop/shop.service.ts';
import { dropSmallJob, listSmallJobs, saveSmallJob } from './small-jobs.service.ts';
import { addFamily, getRevision, listFamilies, saveSheet } from './specs.service.ts';

export const specsHandlers: Handlers<'specs'> = {
  'specs.listFamilies': (desk) => desk.shop().read(listFamilies),
  'specs.getRevision': (desk, input) => desk.shop().read((reading) => getRevision(reading, input)),
  'specs.listSmallJobs': (desk, input) => desk.shop().read((reading) => listSmallJobs(reading, input)),
  'specs.saveSmallJob': (desk, input) => desk.shop().write((writing, now) => saveSmallJob(writing, now, input)),
  'specs.dropSmallJob': (desk, input) => desk.shop().write((writing) => dropSmallJob(writing, input)),
  'specs.addFamily': (desk, input) => desk.shop().write((writing, now) => addFamily(writing, now, input)),
  'specs.saveSheet': (desk, input) => {
    const shop = desk.shop();
    const isKept = (sha256: string) => isJpegKept(shop.file, sha256);
    return shop.write((writing, now) => saveSheet(writing, now, input, isKept));
  },
  'specs.keepPicture': async (desk, { of, by }) => {
    const shop = desk.shop();
    await shop.read((reading) => personAtWork(reading, by));
    if ('jpegBase64' in of) return keepJpeg(shop.file, of.jpegBase64);
    return shop.read((reading) => pictureOfPhoto(reading, of.photoId));
  },
  'specs.getPicture': async (desk, { sha256 }) => ({
    jpegBase64: readJpeg(desk.shop().file, sha256),
  }),
};
