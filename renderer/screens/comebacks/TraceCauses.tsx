// For each cause: what on record speaks for it, what against it, and what to look at now; and what would settle it.
import type { CauseLine, CauseOfTrace, Trace } from '../../../app/comebacks/trace.contract.ts';
import { Disclosure } from '../../components/Disclosure.tsx';
import styles from './Comebacks.module.css';
import trace from './Trace.module.css';
import { OpensLink } from './TraceFindings.tsx';

export function TraceCauses({ traced }: { traced: Trace }) {
  const { causes, wouldSettle } = traced;
  const spoken = causes.filter(({ speaksFor, certainty }) => speaksFor.length > 0 || certainty !== null);
  const others = causes.filter((cause) => !spoken.includes(cause));
  return (
    <section className={styles.section} aria-label="What speaks for each cause">
      <h2>What speaks for each cause</h2>
      <p className={trace.text}>
        Nothing here decides. What is on record goes along with a cause or against it; only a measurement or a part in
        the hand settles it.
      </p>
      {wouldSettle.length > 0 && (
        <>
          <h3 className={trace.under}>What would settle it</h3>
          <ul className={trace.settle}>
            {wouldSettle.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </>
      )}
      {spoken.length === 0 && <p>Nothing on record speaks for any of them.</p>}
      {spoken.map((cause) => (
        <CauseBlock key={cause.cause} cause={cause} />
      ))}
      <Disclosure words={spoken.length === 0 ? 'What to look at' : 'Causes nothing on record speaks for'}>
        {others.map((cause) => (
          <CauseBlock key={cause.cause} cause={cause} />
        ))}
      </Disclosure>
    </section>
  );
}

function CauseBlock({ cause: { cause, certainty, speaksFor, speaksAgainst, lookNow } }: { cause: CauseOfTrace }) {
  return (
    <section className={trace.cause} aria-label={cause}>
      <h3>
        {capital(cause)}
        {certainty !== null && <span>, {certainty}</span>}
      </h3>
      <div className={trace.sides}>
        <Lines title="For it" lines={speaksFor} about={cause} />
        <Lines title="Against it" lines={speaksAgainst} about={cause} />
        <Lines title="Look at now" lines={lookNow} about={cause} />
      </div>
    </section>
  );
}

function Lines({ title, lines, about }: { title: string; lines: readonly CauseLine[]; about: string }) {
  return (
    <div>
      <h4>{title}</h4>
      {lines.length === 0 ? (
        <p className="quiet">nothing on record</p>
      ) : (
        <ul>
          {lines.map((line) => (
            <li key={line.sentence}>
              {line.opens === null ? (
                line.sentence
              ) : (
                <OpensLink opens={line.opens} about={about}>
                  {line.sentence}
                </OpensLink>
              )}
              <span className={trace.why}>{line.because}</span>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
