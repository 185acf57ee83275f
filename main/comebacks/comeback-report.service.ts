// The report of a comeback: its facts read in one view of the file, then painted outside of it.

import type { FleetAnswer, FleetSelection } from '../../app/comebacks/fleet.contract.ts';
import type { Copy } from '../../app/papers/build-report-facts.ts';
import { comebackReport } from '../../app/papers/comeback-report.ts';
import type { OpenShop } from '../database/open-shop.ts';
import { listFindings } from '../jobs/findings.service.ts';
import { getJob } from '../jobs/ticket.service.ts';
import { dayHere } from '../ports/clock.ts';
import { getSettings } from '../shop/shop.service.ts';
import { paintInWorker } from '../workers/paint-paper.ts';
import { getComeback } from './log.service.ts';
import { traceComeback } from './trace.service.ts';

export async function printComebackReport(
  shop: OpenShop,
  input: { comebackId: number; copy: Copy; paper?: 'letter' | 'A4' | undefined },
  askFleet: (selection: FleetSelection) => Promise<FleetAnswer>,
): Promise<{ fileName: string; pdfBase64: string }> {
  const trace = await traceComeback(shop, input);
  const { build } = await shop.read((reading) => getComeback(reading, input));
  // The customer's copy holds no figures of other people's units.
  const fleet = input.copy === 'shop' ? await askFleet(wholeFamily(build.unit.familyId)) : null;
  const facts = await shop.read(async (reading) => {
    const settings = await getSettings(reading);
    const comeback = await getComeback(reading, input);
    return {
      copy: input.copy,
      paper: input.paper ?? settings.paper,
      lengthUnit: settings.lengthUnit,
      decimalMark: settings.decimalMark,
      shopName: settings.shopName,
      isDemo: settings.isDemo,
      printedOn: dayHere(shop.clock()),
      comeback,
      built: (await getJob(reading, comeback.build)).checks,
      trace,
      fleet,
      findings: await listFindings(reading, comeback.ticket),
    };
  });
  const pdf = await paintInWorker(comebackReport(facts));
  const fileName = `job ${facts.comeback.ticket.number} comeback report, ${input.copy} copy.pdf`;
  return { fileName, pdfBase64: pdf.toString('base64') };
}

function wholeFamily(familyId: number): FleetSelection {
  const any = { packName: null, revision: null, cause: null, builderId: null, batchId: null };
  const whole = { deliveredFrom: null, deliveredUntil: null, guessUse: false, groupBy: null };
  return { familyId, ...any, ...whole, clock: 'days' };
}
