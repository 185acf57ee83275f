// The program itself, from the contract to the service.
import type { Handlers } from '../rpc/handler.ts';
import { getAbout, getLicence, writeDiagnostics } from './about.service.ts';

export const aboutHandlers: Handlers<'about'> = {
  'about.getAbout': async (desk) => getAbout(desk),
  'about.getLicence': async (_desk, input) => getLicence(input),
  'about.writeDiagnostics': (desk) => writeDiagnostics(desk),
};
