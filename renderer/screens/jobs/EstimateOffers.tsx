// Parts and kits on the ticket that no line charges for yet, with their prices.
import type { EstimateOfJob, StockOffer } from '../../../app/jobs/estimate.contract.ts';
import { Button } from '../../components/Button.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useWrite } from '../../rpc/use-write.ts';
import styles from './EstimateScreen.module.css';
import { useEstimateWords } from './use-estimate-words.ts';

type EstimateOffersProps = { estimate: EstimateOfJob; onTypePrice: (offer: StockOffer) => void };

export function EstimateOffers({ estimate, onTypePrice }: EstimateOffersProps) {
  const { offers, jobId } = estimate;
  const { money } = useEstimateWords();
  const { person } = useAtBench();
  const write = useWrite('jobs.addLinesFromStock');
  const charge = (some: readonly StockOffer[]) =>
    write.mutate({ jobId, batchIds: some.map((offer) => offer.batchId), by: person.personId });
  const priced = offers.filter((offer) => offer.unitPrice_cents !== null);
  if (offers.length === 0) return null;
  return (
    <section className={styles.offers} aria-label="On the ticket, not charged yet">
      <header className={styles.offersHead}>
        <h2>On the ticket, not charged yet</h2>
        {priced.length > 1 && (
          <Button isPending={write.isPending} onPress={() => charge(priced)}>
            {`Charge all ${priced.length}`}
          </Button>
        )}
      </header>
      <Table label="On the ticket, not charged yet">
        <thead>
          <tr>
            <ColumnHead>part</ColumnHead>
            <ColumnHead isNumber>quantity</ColumnHead>
            <ColumnHead isNumber>each</ColumnHead>
            <ColumnHead />
          </tr>
        </thead>
        <tbody>
          {offers.map((offer) => (
            <tr key={offer.batchId} className={styles.line}>
              <RowHead>{offer.description}</RowHead>
              <Cell isNumber>{offer.quantity}</Cell>
              <Cell isNumber>
                {offer.unitPrice_cents === null ? (
                  <span className="quiet">no price</span>
                ) : (
                  money(offer.unitPrice_cents)
                )}
              </Cell>
              <Cell isNumber>
                {offer.unitPrice_cents === null ? (
                  <Button aria-label={`Type a price for ${offer.description}`} onPress={() => onTypePrice(offer)}>
                    Type a price
                  </Button>
                ) : (
                  <Button aria-label={`Charge ${offer.description}`} onPress={() => charge([offer])}>
                    Charge
                  </Button>
                )}
              </Cell>
            </tr>
          ))}
        </tbody>
      </Table>
      <FailureSentence error={write.error} />
    </section>
  );
}
