// Which selective washer brings an end play to its target.
import { endPlayOptions } from '../../app/packs/end-play.ts';
import { formatLength } from '../../app/quantities/format-amount.ts';
import { parseAmount } from '../../app/quantities/parse-amount.ts';
import { boundsOf } from '../../app/readings/judge-take.ts';
import { accepted, Refused } from '../database/errors.ts';
import type { Reading } from '../database/tables.ts';
import { checkOfJobRow, getJobRow } from '../jobs/jobs.service.ts';
import { listTakes } from '../readings/readings.service.ts';
import { getSettings } from '../shop/shop.service.ts';

export async function planShim(reading: Reading, input: { jobId: number; checkId: number; shimIn: string }) {
  const job = await getJobRow(reading, input.jobId);
  const check = await checkOfJobRow(reading, job, input.checkId);
  const { lengthUnit, decimalMark } = await getSettings(reading);
  if (check.shims_nm.length === 0)
    throw new Refused('no-shims', `${check.name} has no selective washers on its spec sheet.`);
  const shim = parseAmount(input.shimIn, {
    quantity: 'length',
    unit: lengthUnit,
    decimalMark,
    largest: 25_400_000,
    what: 'a washer',
  });
  const shimIn_nm = accepted(shim, 'shimIn');
  const takes = await listTakes(reading, input);
  const endPlay_nm = takes.findLast((take) => take.evaluation.mean !== null)?.evaluation.mean;
  if (endPlay_nm === undefined || endPlay_nm === null)
    throw new Refused('not-read', `Read ${check.name} with this washer in first.`);
  const bounds = boundsOf(check.limits);
  const middle = ((bounds.lower ?? 0) + (bounds.upper ?? bounds.lower ?? 0)) / 2;
  const target_nm = check.limits.kind === 'target' ? check.limits.target : middle;
  const shown = (length_nm: number) => formatLength(length_nm, lengthUnit, undefined, decimalMark);
  const space_nm = shimIn_nm + endPlay_nm;
  const found = endPlayOptions(space_nm, check.shims_nm, target_nm, bounds);
  if (!found.ok && found.refusal.code === 'nothing-fits') {
    const wanted = `${shown(space_nm - target_nm)} ${lengthUnit}`;
    throw new Refused('nothing-fits', `No washer on the sheet fits; one of ${wanted} would bring it to its target.`);
  }
  const options = accepted(found);
  const [best] = options;
  return {
    endPlay_nm,
    options: options.map((option) => ({
      shim_nm: option.thickness,
      endPlay_nm: option.endPlay,
      deviation_nm: option.absoluteDeviation,
    })),
    sentence: best
      ? `Washer ${shown(shimIn_nm)} in, end play ${shown(endPlay_nm)}: fit ${shown(best.thickness)}, it should read ${shown(best.endPlay)}.`
      : '',
  };
}
