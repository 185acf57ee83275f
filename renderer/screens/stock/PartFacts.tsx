// What is on hand of a part, as the largest figure, and what is said of it beside.
import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import type { Part } from '../../../app/stock/parts.contract.ts';
import { useMoneyWords } from '../../text/use-money-words.ts';
import { LowMark } from './LowMark.tsx';
import styles from './PartFacts.module.css';

export function PartFacts({ part }: { part: Part }) {
  const money = useMoneyWords();
  const amount = (cents: number | null) => (cents === null ? '' : money(cents));
  return (
    <div className={styles.facts}>
      <p className={styles.onHand}>
        <span className="read">{part.onHand}</span>{' '}
        <span className={styles.unit}>
          <span>on hand{part.unitOfIssue === 'each' ? '' : `, by the ${part.unitOfIssue}`}</span>
          {part.isLow && <LowMark />}
        </span>
      </p>
      <dl className={styles.said}>
        <Fact name="Bin">{part.bin}</Fact>
        <Fact name="Reorder">{reorderWords(part)}</Fact>
        <Fact name="Supplier">{part.supplier}</Fact>
        <Fact name="Price">{amount(part.price_cents)}</Fact>
        <Fact name="Cost">{amount(part.cost_cents)}</Fact>
        <Fact name="Core charge">{amount(part.coreCharge_cents)}</Fact>
        <Fact name="Fits">{part.families.map(({ name }) => name).join(', ') || 'any unit'}</Fact>
        {part.inKits.length > 0 && (
          <Fact name="In kits">
            {part.inKits.map(({ partId, number, quantity }) => (
              <span key={partId} className={styles.kit}>
                {quantity} in{' '}
                <Link to="/stock/parts/$partId" params={{ partId: String(partId) }} className="mono">
                  {number}
                </Link>
              </span>
            ))}
          </Fact>
        )}
      </dl>
    </div>
  );
}

/** What is not known takes no room. */
function Fact({ name, children }: { name: string; children: ReactNode }) {
  if (children === '') return null;
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}

function reorderWords({ reorderPoint, reorderQuantity }: Part): string {
  if (reorderPoint === null) return '';
  return reorderQuantity === null ? `at ${reorderPoint}` : `at ${reorderPoint}, ${reorderQuantity} at a time`;
}
