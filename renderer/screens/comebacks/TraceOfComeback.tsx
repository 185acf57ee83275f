// The trace of a comeback: what stands out of its recorded build, what speaks for each cause, what has changed since.
import { enoughSiblings } from '../../../app/comebacks/how-unusual.ts';
import type { Trace } from '../../../app/comebacks/trace.contract.ts';
import { Disclosure } from '../../components/Disclosure.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useRead } from '../../rpc/use-read.ts';
import styles from './Comebacks.module.css';
import trace from './Trace.module.css';
import { TraceAsFound } from './TraceAsFound.tsx';
import { TraceCauses } from './TraceCauses.tsx';
import { TraceFindings } from './TraceFindings.tsx';

export function TraceOfComeback({ comebackId }: { comebackId: number }) {
  const read = useRead('comebacks.trace', { comebackId });
  return (
    <Loaded read={read}>
      {(traced) => (
        <>
          <WhatStandsOut traced={traced} />
          <TraceCauses traced={traced} />
          <TraceAsFound traced={traced} />
        </>
      )}
    </Loaded>
  );
}

function WhatStandsOut({ traced }: { traced: Trace }) {
  return (
    <section className={styles.section} aria-label="What stands out of the build">
      <h2>What stands out of the build</h2>
      <p className={trace.said}>{besideWords(traced)}</p>
      <p>{traced.looks.sentence}</p>
      <Disclosure words="Why">
        <p className={trace.text}>
          A number is unusual by its rank: twice its place from the nearer end, over the number of builds, this one
          counted. A word is unusual by how many builds have one no commoner. A batch is counted over the other builds
          by Fisher’s exact test. 1 in 20 or fewer is called unusual. With fewer than {enoughSiblings} other builds a
          fact is told and not ranked.
        </p>
        <p className={trace.text}>
          A check is held beside those of the same name and limits. Many facts are looked at, so some are unusual by
          chance. What stands out may have nothing to do with the trouble: association is not cause.
        </p>
      </Disclosure>
      <TraceFindings findings={traced.findings} />
    </section>
  );
}

function besideWords({ siblings, areNearest, familyName, builtJobNumber }: Trace): string {
  if (siblings === 0) return `No other build of ${familyName} was delivered yet: job ${builtJobNumber} stands alone.`;
  const builds = siblings === 1 ? '1 other build' : `${siblings} other builds`;
  const nearest = areNearest ? ', those nearest to it in time' : '';
  return `Job ${builtJobNumber} beside ${builds} of ${familyName}${nearest}.`;
}
