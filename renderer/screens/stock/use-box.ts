// Measuring a box without waiting: lines are written down one after the other while the hand is at the next plate.
import { useCallback, useEffect, useRef } from 'react';
import type { Output } from '../../../app/contract/contract.ts';
import { nextTag } from '../../../app/stock/next-tag.ts';
import { useAtBench } from '../../frame/at-bench.ts';
import { Refused } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useDraft } from '../../text/use-draft.ts';
import {
  type Asked,
  type Box,
  committed,
  emptyBox,
  type Measured,
  takenUpAgain,
  withMeasured,
  withoutLast,
} from './box-draft.ts';

export type BoxAtHand = {
  readonly box: Box;
  readonly change: (box: (before: Box) => Box) => void;
  readonly commit: () => void;
  readonly takeBack: () => void;
  readonly takingBackFailed: Error | null;
  readonly clear: () => void;
};

export function useBox(outline: string): BoxAtHand {
  const draft = useDraft<Box>(`box of ${outline}`, emptyBox);
  const { person } = useAtBench();
  const add = useWrite('stock.addMeasured');
  const back = useWrite('stock.takeBackMeasured');
  // Answers come back after more was typed, so they are put onto what stands there then.
  const newest = useRef(draft.value);
  newest.current = draft.value;
  const keep = draft.change;
  const change = useCallback(
    (next: (before: Box) => Box) => {
      newest.current = next(newest.current);
      keep(newest.current);
    },
    [keep],
  );

  const isWriting = useRef(false);
  const isSure = useRef(false);
  const writeDown = async () => {
    const { setUp, isSetUp, waiting, asked } = newest.current;
    const typed = waiting[0];
    if (isWriting.current || asked !== null || typed === undefined || setUp === null || !isSetUp) return;
    isWriting.current = true;
    const into =
      setUp.into === 'can'
        ? ({ kind: 'can', class_nm: setUp.class_nm } as const)
        : ({ kind: 'single', tag: setUp.tag } as const);
    try {
      const answer = await add.mutateAsync({
        kind: setUp.kind,
        outline,
        typed,
        into,
        batchId: setUp.batch?.batchId ?? null,
        micrometer: setUp.micrometer,
        isSure: isSure.current,
        by: person.personId,
      });
      change((box) => withMeasured(box, measuredAs(answer, setUp.tag)));
    } catch (failure) {
      change((box) => askedAbout(box, failure as Error));
    } finally {
      isSure.current = false;
      isWriting.current = false;
    }
  };
  const isTakenUp = useRef(false);
  // Each answer draws the screen again, and the next line that waits goes on its way.
  useEffect(() => {
    if (!isTakenUp.current) {
      isTakenUp.current = true;
      change(takenUpAgain);
    }
    void writeDown();
  });

  const commit = () => {
    isSure.current = newest.current.asked?.meansIt === 'is sure';
    change(committed);
  };
  const takeBack = () => {
    const last = newest.current.run.at(-1);
    if (!last || back.isPending || newest.current.waiting.length > 0) return;
    const which =
      last.into.kind === 'can'
        ? { canMovementId: last.into.canMovementId, pieceId: null }
        : { canMovementId: null, pieceId: last.into.pieceId };
    back.mutate({ ...which, by: person.personId }, { onSuccess: () => change(withoutLast) });
  };
  return { box: draft.value, change, commit, takeBack, takingBackFailed: back.error, clear: draft.clear };
}

function measuredAs({ height_nm, into }: Output<'stock.addMeasured'>, tag: string): Measured {
  return { height_nm, into: into.kind === 'single' ? { ...into, tag } : into };
}

function askedAbout(box: Box, failure: Error): Box {
  const asked = (sentence: string, meansIt: Asked['meansIt']): Asked => ({ sentence, meansIt });
  if (!(failure instanceof Refused)) return { ...box, asked: asked(failure.message, 'try again') };
  if (failure.code === 'unlikely') return { ...box, asked: asked(failure.message, 'is sure') };
  if (failure.code === 'tag-taken' && box.setUp !== null && box.setUp.tag !== '') {
    const tag = nextTag(box.setUp.tag);
    return {
      ...box,
      setUp: { ...box.setUp, tag },
      asked: asked(`There is already a plate ${box.setUp.tag}. Enter writes this one down as ${tag}.`, 'try again'),
    };
  }
  return { ...box, asked: asked(failure.message, null) };
}
