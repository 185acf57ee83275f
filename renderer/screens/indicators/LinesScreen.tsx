// Gauges that speak for themselves: which one this bench reads, its pedal and sounds, and how each line is set.
import { useState } from 'react';
import type { GaugeLine } from '../../../app/indicators/indicators.contract.ts';
import { Button } from '../../components/Button.tsx';
import { FormSection } from '../../components/FormSection.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { GaugesTabs } from '../../frame/GaugesTabs.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { BenchHabitsForm } from './BenchHabitsForm.tsx';
import { LineForm } from './LineForm.tsx';
import styles from './Lines.module.css';
import { TryLine } from './TryLine.tsx';

export function LinesScreen() {
  const lines = useRead('indicators.listLines', {});
  const { isDemo } = useOpenShop();
  return (
    <>
      <GaugesTabs />
      <PageHead title="Gauges on a line" acts={<LinkKey to="/bench">To the bench</LinkKey>} />
      <Loaded read={lines}>
        {(all) => {
          const used = all.filter((line) => !line.isRetired);
          return (
            <>
              <FormSection
                title="This bench"
                about="Kept on this machine. A gauge on a line offers what it reads; nothing is written until a hand accepts it, and a line can always be typed."
              >
                <BenchHabitsForm lines={used} />
              </FormSection>
              <FormSection
                title="Lines"
                about={`An indicator on a serial or USB-serial cable. A cable that types like a keyboard needs none of this: it types into the bench’s line. ${
                  isDemo
                    ? 'The practice gauge makes its readings up; they are marked.'
                    : 'The practice gauge can be tried here and reads jobs in the demo shop only.'
                }`}
              >
                <Lines lines={used} />
              </FormSection>
            </>
          );
        }}
      </Loaded>
    </>
  );
}

type Open = { readonly lineId: number | 'serial' | 'practice'; readonly as: 'try' | 'change' } | null;

function Lines({ lines }: { lines: readonly GaugeLine[] }) {
  const [open, setOpen] = useState<Open>(null);
  const retire = useWrite('indicators.retireLine');
  const close = () => setOpen(null);
  return (
    <>
      {lines.length === 0 && <p>No line is set yet.</p>}
      <ul className={styles.lines}>
        {lines.map((line) => (
          <li key={line.lineId}>
            <div className={styles.line}>
              <p>
                <b>{line.name}</b>
                <span className="quiet"> {lineWords(line)}</span>
              </p>
              <Button onPress={() => setOpen({ lineId: line.lineId, as: 'try' })}>Try it</Button>
              <Button onPress={() => setOpen({ lineId: line.lineId, as: 'change' })}>Change</Button>
              <Button onPress={() => retire.mutate({ lineId: line.lineId })}>No longer used</Button>
            </div>
            {open?.lineId === line.lineId && open.as === 'try' && <TryLine line={line} />}
            {open?.lineId === line.lineId && open.as === 'change' && (
              <LineForm line={line} source={line.source} onDone={close} />
            )}
          </li>
        ))}
      </ul>
      <FailureSentence error={retire.error} />
      {open?.lineId === 'serial' || open?.lineId === 'practice' ? (
        <LineForm line={null} source={open.lineId} onDone={close} />
      ) : (
        <div className={styles.acts}>
          <Button onPress={() => setOpen({ lineId: 'serial', as: 'change' })}>Set a line</Button>
          <Button onPress={() => setOpen({ lineId: 'practice', as: 'change' })}>Add a practice gauge</Button>
        </div>
      )}
    </>
  );
}

/** "/dev/ttyUSB0, 9600 8N1", "practice, steady". */
function lineWords(line: GaugeLine): string {
  if (line.source === 'practice') return `practice, ${line.practice}`;
  const parity = { none: 'N', even: 'E', odd: 'O' }[line.parity];
  return `${line.path}, ${line.baudRate} ${line.dataBits}${parity}${line.stopBits}`;
}
