// Labels: the sizes a shop sticks on, and what stands on the label of a part, a batch, a can, a plate, a job or a gauge.
import { writeDay } from '../../app/papers/dates.ts';
import { type LabelWords, layLabel, pointsOf_um } from '../../app/papers/labels.ts';
import { formatLength } from '../../app/quantities/format-amount.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';
import { labelCode } from '../../app/stock/label-code.ts';
import { parseLabelSide } from '../../app/stock/label-size.ts';
import type { Labelled, LabelSize, PrintedFile } from '../../app/stock/lists.contract.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { OpenShop } from '../database/open-shop.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { findGauge } from '../gauges/register.repository.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import { paintInWorker } from '../workers/paint-paper.ts';
import * as repository from './labels.repository.ts';

/** A roll has as many, and more take minutes to paint. */
const mostLabels = 1000;

export async function listLabelSizes(reading: Reading): Promise<LabelSize[]> {
  const rows = await repository.listSizes(reading);
  return rows.map(({ label_size_id, ...size }) => ({ labelSizeId: label_size_id, ...size }));
}

export async function saveLabelSize(
  writing: Writing,
  input: { labelSizeId: number | null; name: string; width: string; height: string; by: number },
) {
  await personAtWork(writing, input.by);
  const { decimalMark } = await getSettings(writing);
  const size = {
    name: input.name,
    width_um: accepted(parseLabelSide(input.width, 'width', decimalMark), 'width'),
    height_um: accepted(parseLabelSide(input.height, 'height', decimalMark), 'height'),
  };
  const known = await repository.listSizes(writing);
  if (known.some((each) => each.name === size.name && each.label_size_id !== input.labelSizeId)) {
    throw new Refused('size-exists', `There is already a label size “${size.name}”: change that one.`, 'name');
  }
  if (input.labelSizeId === null) return { labelSizeId: await repository.insertSize(writing, size) };
  const { label_size_id } = found(
    known.find((each) => each.label_size_id === input.labelSizeId),
    'label size',
  );
  await repository.replaceSize(writing, label_size_id, size);
  return { labelSizeId: label_size_id };
}

export async function printLabels(
  shop: OpenShop,
  input: { labelSizeId: number; labels: ReadonlyArray<{ of: Labelled; copies: number }> },
): Promise<PrintedFile> {
  const count = input.labels.reduce((sum, { copies }) => sum + copies, 0);
  if (count > mostLabels) {
    throw new Refused(
      'too-many-labels',
      `That is ${count.toLocaleString('en-US')} labels: print ${mostLabels.toLocaleString('en-US')} at a time at most.`,
    );
  }
  const madeAt = shop.clock();
  const sheet = await shop.read(async (reading) => {
    const settings = await getSettings(reading);
    const size = found(
      (await repository.listSizes(reading)).find((each) => each.label_size_id === input.labelSizeId),
      'label size',
    );
    const labels = [];
    for (const { of, copies } of input.labels) {
      const label = layLabel({ code: labelCode(of), ...(await wordsOn(reading, of, settings)) }, size);
      for (let copy = 0; copy < copies; copy += 1) labels.push(label);
    }
    const title = `${count === 1 ? 'One label' : `${count} labels`}, ${size.name}`;
    const page = { width: pointsOf_um(size.width_um), height: pointsOf_um(size.height_um) };
    return { ...page, title, author: settings.shopName, madeAt, labels };
  });
  const pdf = await paintInWorker(sheet);
  return {
    fileName: `labels ${madeAt.slice(0, 10)}.pdf`,
    mediaType: 'application/pdf',
    base64: pdf.toString('base64'),
  };
}

/** What a person looks for from afar, and what is asked about it up close. */
async function wordsOn(reading: Reading, of: Labelled, settings: Settings): Promise<Omit<LabelWords, 'code'>> {
  const { lengthUnit, decimalMark } = settings;
  const height = (height_nm: number) => formatLength(height_nm, lengthUnit, undefined, decimalMark);
  switch (of.kind) {
    case 'part': {
      const part = found(await repository.findPart(reading, of.partId), 'part');
      return { big: part.number, lines: [inBin(part.bin), part.description, part.supplier] };
    }
    case 'batch': {
      const batch = found(await repository.findBatch(reading, of.batchId), 'batch');
      const told = batch.mark === '' ? batch.document : `batch ${batch.mark}`;
      return {
        big: batch.number,
        lines: [told, writeDay(batch.received_on), inBin(batch.bin), batch.description],
      };
    }
    case 'can': {
      const can = found(await repository.findCan(reading, of.canId), 'can');
      return { big: height(can.height_nm), lines: [`${lengthUnit} · ${can.kind}`, can.outline] };
    }
    case 'plate': {
      const plate = found(await repository.findPlate(reading, of.pieceId), 'plate');
      const tagged = { big: plate.tag, lines: [`${height(plate.height_nm)} ${lengthUnit} · ${plate.kind}`] };
      const bare = { big: height(plate.height_nm), lines: [`${lengthUnit} · ${plate.kind}`] };
      const { big, lines } = plate.tag === '' ? bare : tagged;
      return { big, lines: [...lines, plate.outline] };
    }
    case 'job': {
      const job = found(await repository.findJob(reading, of.jobId), 'job');
      const unit = `${job.family_name} ${job.serial}`.trim();
      const caseTag = job.case_tag === '' ? '' : `case tag ${job.case_tag}`;
      return { big: `Job ${job.number}`, lines: [unit, job.customer_name, caseTag] };
    }
    case 'gauge': {
      const gauge = found(await findGauge(reading, of.gaugeId), 'gauge');
      const serial = gauge.serial === '' ? '' : `serial ${gauge.serial}`;
      return { big: gauge.tag, lines: [gauge.kind, serial] };
    }
  }
}

function inBin(bin: string): string {
  return bin === '' ? '' : `bin ${bin}`;
}
