// Where something came from, what came out of it, and every unit it went into with what that unit's packs read.
import { Link } from '@tanstack/react-router';
import type { Output } from '../../../app/contract/contract.ts';
import type { Traced } from '../../../app/stock/tracing.contract.ts';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Notice } from '../../components/Notice.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { StockTabs } from './StockTabs.tsx';
import styles from './TraceScreen.module.css';
import { TraceUnits } from './TraceUnits.tsx';
import { addressOf, tracedAt } from './traced-address.ts';

export function TraceScreen({ kind, id }: { kind: string; id: number }) {
  const of = tracedAt(kind, id);
  if (of === null) {
    return (
      <EmptyState title="There is nothing to trace at this address.">
        A part, a batch, a can or a plate is traced from its own page.
      </EmptyState>
    );
  }
  return <Trail of={of} />;
}

function Trail({ of }: { of: Traced }) {
  const trail = useRead('stock.trace', { of });
  const { kind, id } = addressOf(of);
  return (
    <>
      <StockTabs />
      <Loaded read={trail}>
        {({ title, from, into, onHand, units, caution }) => (
          <>
            <PageHead title={title} />
            <div className={styles.second}>
              <p>
                {onHand} on hand, {unitCount(units)}
              </p>
              <div className={styles.keys}>
                {of.kind === 'part' && (
                  <LinkKey to="/stock/parts/$partId" params={{ partId: id }}>
                    The part
                  </LinkKey>
                )}
                <LinkKey to="/stock/labels" search={{ of: `${kind}:${id}` }}>
                  Label
                </LinkKey>
              </div>
            </div>
            <div className={styles.ways}>
              <Steps title="Where it came from" steps={from} />
              <Steps title={of.kind === 'part' ? 'Its batches' : 'What came out of it'} steps={into} />
            </div>
            <section className={styles.units} aria-labelledby="units">
              <h2 id="units">Units it went into</h2>
              {caution !== '' && <Notice>{caution}</Notice>}
              {units.length > 0 ? (
                <TraceUnits units={units} />
              ) : (
                <p className="quiet">Nothing of it went into a unit yet.</p>
              )}
            </section>
          </>
        )}
      </Loaded>
    </>
  );
}

function unitCount(units: Output<'stock.trace'>['units']): string {
  if (units.length === 0) return 'in no unit';
  const stillIn = units.filter((unit) => unit.isStillIn).length;
  return `went into ${units.length === 1 ? '1 unit' : `${units.length} units`}, still in ${stillIn}`;
}

function Steps({ title, steps }: { title: string; steps: Output<'stock.trace'>['from'] }) {
  if (steps.length === 0) return null;
  return (
    <nav aria-label={title}>
      <h2>{title}</h2>
      <ul>
        {steps.map((step) => (
          <li key={`${step.of.kind} ${addressOf(step.of).id}`}>
            <Link to="/stock/trace/$kind/$id" params={addressOf(step.of)}>
              {step.says}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
