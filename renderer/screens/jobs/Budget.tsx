// What a ± is made of: each line's standard uncertainty and its share, the sum, and how far it is drawn.
import type { CheckOfJob } from '../../../app/jobs/jobs.contract.ts';
import { chanceWords } from '../../../app/packs/chance-words.ts';
import { formatAmount } from '../../../app/quantities/format-amount.ts';
import { unitNamed } from '../../../app/quantities/units.ts';
import type { Evaluation } from '../../../app/readings/readings.contract.ts';
import { BudgetTable } from '../../components/BudgetTable.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { amountWords } from '../../text/amount-words.ts';

export function Budget({ evaluation, check }: { evaluation: Evaluation; check: CheckOfJob }) {
  const { settings } = useOpenShop();
  const words = amountWords(check, settings);
  // One decimal more than the reading: these are its parts.
  const unit = unitNamed(words.unit);
  const fine = (amount: number) =>
    formatAmount(amount, unit, { decimals: unit.decimals + 1, decimalMark: settings.decimalMark });
  const decimal = (value: number, decimals = 2) => value.toFixed(decimals).replace('.', settings.decimalMark);
  const { standardUncertainty, coverageFactor, expanded, effectiveDegreesOfFreedom } = evaluation;
  return (
    <>
      <BudgetTable
        label="Uncertainty budget"
        density="dense"
        heads={['from', `standard uncertainty, ${words.unit}`]}
        of={evaluation}
        write={fine}
      />
      {coverageFactor !== null && standardUncertainty !== null && expanded !== null && (
        <p className="small">
          Drawn {decimal(coverageFactor)} times as wide, so that it holds 95 times in 100
          {effectiveDegreesOfFreedom === null
            ? ''
            : ` (Student’s t at ${decimal(effectiveDegreesOfFreedom, 1)} effective degrees of freedom)`}
          : {decimal(coverageFactor)} × {fine(standardUncertainty)} = {fine(expanded)} {words.unit}.
        </p>
      )}
      <Acceptance evaluation={evaluation} check={check} />
    </>
  );
}

/** Where a mean has to lie to be called in under the shop's rule, and the chance that it is. */
function Acceptance({ evaluation, check }: { evaluation: Evaluation; check: CheckOfJob }) {
  const { settings } = useOpenShop();
  const words = amountWords(check, settings);
  const { acceptance, verdict, decisionRule } = evaluation;
  const { probabilityConforming } = verdict;
  const chance =
    probabilityConforming === null
      ? ''
      : ` The chance that it is inside the limits: ${chanceWords(probabilityConforming)}.`;
  if (acceptance === null) return chance === '' ? null : <p className="small">{chance.trim()}</p>;
  const { lower, upper } = acceptance;
  const zone =
    lower !== null && upper !== null
      ? `from ${words.full(lower)} to ${words.full(upper)}`
      : lower !== null
        ? `from ${words.full(lower)} up`
        : upper !== null
          ? `up to ${words.full(upper)}`
          : null;
  if (zone === null) return null;
  return (
    <p className="small">
      Under the shop’s {decisionRule} rule it is called in {zone}.{chance}
    </p>
  );
}
