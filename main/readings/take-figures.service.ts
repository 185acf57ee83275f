// What a take that begins now leans on: the shop's settings, and what its own readings have taught it.
import { feelerAboveAir, ownRepeats } from '../../app/readings/own-reads.ts';
import type { OwnRepeatability } from '../../app/readings/readings.contract.ts';
import { enoughDegreesOfFreedom, type OwnRepeats } from '../../app/readings/repeatability.ts';
import {
  figuresNow,
  isPooled,
  type NamedGauge,
  type PooledMethod,
  type TakeFigures,
} from '../../app/readings/take-figures.ts';
import type { ReadingMethod } from '../../app/specs/spec-sheet.ts';
import type { SavedCheck } from '../../app/specs/specs.contract.ts';
import type { Reading } from '../database/tables.ts';
import { repeatsOfTests } from '../gauges/studies.repository.ts';
import { getSettings } from '../shop/shop.service.ts';
import * as repository from './take-figures.repository.ts';

/** Asked before the take is there, so that it cannot lean on itself. */
export async function figuresAtStart(
  reading: Reading,
  check: SavedCheck,
  method: ReadingMethod,
  personId: number,
  gauge: NamedGauge | null,
): Promise<TakeFigures> {
  const isLength = check.quantity === 'length';
  const learned = {
    repeats: isLength && isPooled(method) ? await repeatsOf(reading, method) : null,
    feelerAboveAir:
      method === 'feeler' && check.method === 'air' && check.packId !== null
        ? await feelerDifferences(reading, check.packId, personId)
        : null,
  };
  return figuresNow(check, method, await getSettings(reading), learned, gauge);
}

export async function getRepeatability(reading: Reading) {
  return {
    enoughRepeats: enoughDegreesOfFreedom,
    air: ownRepeatability(await repeatsOf(reading, 'air')),
    dial: ownRepeatability(await repeatsOf(reading, 'dial')),
    direct: ownRepeatability(await repeatsOf(reading, 'direct')),
  };
}

function ownRepeatability({ sumOfSquares, degreesOfFreedom }: OwnRepeats): OwnRepeatability {
  return {
    standardDeviation_nm: degreesOfFreedom === 0 ? null : Math.sqrt(sumOfSquares / degreesOfFreedom),
    repeats: degreesOfFreedom,
    isUsed: degreesOfFreedom >= enoughDegreesOfFreedom,
  };
}

/** Repeats at the bench and of finished repeat tests, pooled by their degrees of freedom (JCGM 100:2008 H.5.2.5). */
async function repeatsOf(reading: Reading, method: PooledMethod): Promise<OwnRepeats> {
  const own = ownRepeats(await repository.newestRepeats(reading, method));
  const tests = await repeatsOfTests(reading, method);
  return {
    sumOfSquares: own.sumOfSquares + tests.sumOfSquares,
    degreesOfFreedom: own.degreesOfFreedom + tests.degreesOfFreedom,
  };
}

async function feelerDifferences(reading: Reading, packId: number, personId: number): Promise<number[]> {
  const takes = await repository.pairableTakes(reading, packId, personId);
  const reads = await repository.readsOfTakes(
    reading,
    takes.map(({ takeId }) => takeId),
  );
  return feelerAboveAir(takes, reads);
}
