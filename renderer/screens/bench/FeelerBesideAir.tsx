// The same pack by feeler and by air, side by side, and what is known of the difference so far.

import { asRead, feelerBesideAir } from '../../../app/readings/feeler-beside-air.ts';
import { enoughPairs } from '../../../app/readings/feeler-bias.ts';
import type { Take } from '../../../app/readings/readings.contract.ts';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useAtCheck } from './at-check.ts';

/** Nothing where the pack was read one way only as it stands. */
export function FeelerBesideAir({ take }: { take: Take }) {
  const { takes, words } = useAtCheck();
  const both = feelerBesideAir(take, takes);
  if (!both) return null;
  const { feeler, air, feelerAboveAir } = both;
  const figure = (amount: number | null) => (amount === null ? '' : words.full(amount));
  return (
    <section>
      <Table label="Feeler beside air" density="reading">
        <thead>
          <tr>
            <ColumnHead>the same pack</ColumnHead>
            <ColumnHead isNumber>by air</ColumnHead>
            <ColumnHead isNumber>by feeler</ColumnHead>
            <ColumnHead isNumber>feeler less air</ColumnHead>
          </tr>
        </thead>
        <tbody>
          <tr>
            <RowHead>clearance</RowHead>
            <Cell isNumber>{figure(asRead(air))}</Cell>
            <Cell isNumber>{figure(asRead(feeler))}</Cell>
            <Cell isNumber isStrong>
              {words.full(feelerAboveAir)}
            </Cell>
          </tr>
        </tbody>
      </Table>
      {/* A feeler take says it among its remarks. */}
      {take.method === 'air' && <p className="quiet">{learnedSentence(feeler, figure)}</p>}
    </section>
  );
}

function learnedSentence({ by, evaluation }: Take, figure: (amount: number) => string): string {
  if (!evaluation.feelerBias) return '';
  const { pairs, bias } = evaluation.feelerBias;
  if (bias === null) return `Fewer than eight pairs in ${by}’s hands: ${pairs} of ${enoughPairs} so far.`;
  return `Feeler less air in ${by}’s hands: ${figure(bias)}, learned from ${pairs} pairs.`;
}
