// What every ± is made of, with what the shop's own repeats say so far beside the figures they take the place of.
import { formatAmount } from '../../../app/quantities/format-amount.ts';
import { unitNamed } from '../../../app/quantities/units.ts';
import type { OwnRepeatability } from '../../../app/readings/readings.contract.ts';
import type { Settings } from '../../../app/shop/shop.contract.ts';
import { useRead } from '../../rpc/use-read.ts';
import { LengthSettings } from './LengthSettings.tsx';
import { handAndGauge } from './length-settings.ts';

export function HandAndGauge({ settings }: { settings: Settings }) {
  const { data } = useRead('readings.getRepeatability', {});
  const sentence = (own: OwnRepeatability) => ownSentence(own, data?.enoughRepeats ?? 0, settings);
  const learned = data && {
    repeatability_nm: sentence(data.air),
    dialRepeatability_nm: sentence(data.dial),
    directRepeatability_nm: sentence(data.direct),
  };
  return (
    <LengthSettings
      label="Hand and gauge"
      lengths={handAndGauge}
      settings={settings}
      asksReadsBehind
      {...(learned && { learned })}
    />
  );
}

/** "Own repeats: 0.62 thou from 46, used in place of this." */
function ownSentence(own: OwnRepeatability, enoughRepeats: number, settings: Settings): string {
  const { standardDeviation_nm, repeats, isUsed } = own;
  if (standardDeviation_nm === null) return `Own repeats: none yet; used from ${enoughRepeats} on.`;
  const unit = unitNamed(settings.lengthUnit);
  // One decimal more than a reading: it is a part of one.
  const spread = formatAmount(standardDeviation_nm, unit, {
    decimals: unit.decimals + 1,
    decimalMark: settings.decimalMark,
  });
  const use = isUsed ? ', used in place of this figure.' : `; used from ${enoughRepeats} on.`;
  return `Own repeats: ${spread} ${settings.lengthUnit} from ${repeats}${use}`;
}
