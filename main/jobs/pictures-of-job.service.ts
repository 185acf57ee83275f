// The pictures of a job's sheet with the newest number or tick at every point, for its build report.
import type { MarkedPoint } from '../../app/charts/picture-points.ts';
import type { PicturesOnPaper } from '../../app/papers/marked-pictures.ts';
import { formatAmount } from '../../app/quantities/format-amount.ts';
import { shownUnit, unitNamed } from '../../app/quantities/units.ts';
import { shownVerdict } from '../../app/readings/verdict-words.ts';
import type { SavedPicture } from '../../app/specs/specs.contract.ts';
import type { Reading } from '../database/tables.ts';
import { getSettings } from '../shop/shop.service.ts';
import { picturesOnPaper } from '../specs/pictures-on-paper.service.ts';
import { getRevision } from '../specs/specs.service.ts';
import { listListsOfJob } from './lists-of-job.service.ts';
import { getJob } from './ticket.service.ts';

type Marked = Pick<MarkedPoint, 'figure' | 'mark'>;

export async function picturesOfJob(reading: Reading, shopFile: string, jobId: number): Promise<PicturesOnPaper> {
  const { lengthUnit, decimalMark } = await getSettings(reading);
  const job = await getJob(reading, { jobId });
  const lists = await listListsOfJob(reading, { jobId, when: null });
  const lines = lists.flatMap((list) => list.lines);
  const { pictures } = await getRevision(reading, { familyId: job.unit.familyId, number: job.revisionNumber });
  const mark = ({ checkId, lineId }: SavedPicture['points'][number]): Marked => {
    const check = job.checks.find((each) => each.checkId === checkId);
    const line = lines.find((each) => each.lineId === lineId);
    if (!check) return { figure: '', mark: line ? { kind: 'tick', state: line.standing } : { kind: 'none' } };
    const { latest, quantity } = check;
    const unit = shownUnit(check.unit, lengthUnit);
    const amount = latest?.value == null ? '' : formatAmount(latest.value, unitNamed(unit), { decimalMark });
    const figure = amount === '' ? '' : `${amount} ${unit}`.trim();
    return { figure, mark: { kind: 'verdict', verdict: shownVerdict(latest?.verdict ?? null, quantity) } };
  };
  return picturesOnPaper(shopFile, pictures, mark);
}
