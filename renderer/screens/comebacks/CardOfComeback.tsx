// What a comeback turned out to be: the card that stands, the ones before it, and the form that writes it anew.
import { useState } from 'react';
import type { Comeback, ComebackCard } from '../../../app/comebacks/log.contract.ts';
import { distanceWords } from '../../../app/jobs/warranty.ts';
import { CoverRule } from '../../comebacks/CoveredEntry.tsx';
import { Button } from '../../components/Button.tsx';
import { Disclosure } from '../../components/Disclosure.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { sayBusinessDay } from '../../text/part-words.ts';
import { sayDayAndTime } from '../../text/say-date.ts';
import { useMoneyWords } from '../../text/use-money-words.ts';
import { CardForm } from './CardForm.tsx';
import styles from './Comebacks.module.css';
import { isStrong } from './comeback-words.ts';

export function CardOfComeback({ comeback }: { comeback: Comeback }) {
  const [isOpen, setOpen] = useState(false);
  const { card, earlierCards, build } = comeback;
  return (
    <section className={styles.section} aria-label="What it was">
      <h2>What it was</h2>
      {isOpen ? (
        <CardForm comeback={comeback} onDone={() => setOpen(false)} />
      ) : (
        <>
          <CardFacts card={card} />
          <div className={styles.sentence}>
            <CoverRule left={build.left} now={{ day: card.cameBackOn, distance: card.distance }} />
          </div>
          <div className={styles.keys}>
            <Button kind={card.outcome === 'not known yet' ? 'filled' : 'plain'} onPress={() => setOpen(true)}>
              {card.outcome === 'not known yet' ? 'Say what it was' : 'Correct'}
            </Button>
          </div>
          {earlierCards.length > 0 && (
            <Disclosure
              words={earlierCards.length === 1 ? 'As written before' : `${earlierCards.length} written before`}
            >
              {earlierCards.map((each) => (
                <CardFacts key={each.at} card={each} />
              ))}
            </Disclosure>
          )}
        </>
      )}
    </section>
  );
}

function CardFacts({ card }: { card: ComebackCard }) {
  const { decimalMark } = useOpenShop().settings;
  const money = useMoneyWords();
  const facts = [
    ['Customer says', card.customerSays],
    ['Back on', sayBusinessDay(card.cameBackOn)],
    ['On it', card.distance === null ? '' : distanceWords(card.distance, decimalMark)],
    ['Covered', [card.covered, card.coveredNote].filter(Boolean).join(': ')],
    ['Cost', card.cost_cents === null ? '' : money(card.cost_cents)],
    ['Note', card.note],
    ['Changed', card.reason],
  ];
  return (
    <dl className={styles.facts}>
      <dt>Outcome</dt>
      <dd className={isStrong(card.outcome) ? styles.big : undefined}>{card.outcome}</dd>
      {facts.map(
        ([name, says]) =>
          says !== '' && (
            <div key={name} className={styles.fact}>
              <dt>{name}</dt>
              <dd>{says}</dd>
            </div>
          ),
      )}
      <div className={styles.fact}>
        <dt>Written</dt>
        <dd className="quiet">
          {card.by}, {sayDayAndTime(card.at)}
        </dd>
      </div>
    </dl>
  );
}
