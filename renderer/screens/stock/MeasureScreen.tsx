// A whole box measured: height, Enter, the next one; into cans by class or one by one with tags that count up.
import { useNavigate } from '@tanstack/react-router';
import type { PieceKind } from '../../../app/specs/spec-sheet.ts';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { MeasureEntry } from './MeasureEntry.tsx';
import { MeasureRun } from './MeasureRun.tsx';
import styles from './MeasureScreen.module.css';
import { MeasureSetUp } from './MeasureSetUp.tsx';
import { useBox } from './use-box.ts';

export function MeasureScreen({ outline }: { outline: string }) {
  const outlines = useRead('stock.listOutlines', {});
  return (
    <div className={styles.page}>
      <PageHead
        title="Measure a box"
        facts={outline}
        acts={
          <LinkKey to="/stock/plates/$outline" params={{ outline }}>
            Back to the plates
          </LinkKey>
        }
      />
      <Loaded read={outlines}>
        {(known) => (
          <Measure
            key={outline}
            outline={outline}
            kind={known.find((each) => each.outline === outline)?.kinds[0] ?? 'steel'}
          />
        )}
      </Loaded>
    </div>
  );
}

function Measure({ outline, kind }: { outline: string; kind: PieceKind }) {
  const atHand = useBox(outline);
  const navigate = useNavigate();
  const { box, change } = atHand;
  if (box.setUp === null || !box.isSetUp) {
    return (
      <MeasureSetUp
        kind={kind}
        last={box.setUp}
        onSetUp={(setUp) => change((before) => ({ ...before, setUp, isSetUp: true }))}
      />
    );
  }
  return (
    <div className={styles.work}>
      <MeasureEntry
        atHand={atHand}
        setUp={box.setUp}
        onDone={() => {
          atHand.clear();
          void navigate({ to: '/stock/plates/$outline', params: { outline } });
        }}
      />
      <MeasureRun run={box.run} setUp={box.setUp} />
    </div>
  );
}
