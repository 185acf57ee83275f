// The warranty this shop usually gives, as data; each job that leaves may have another.
import { useState } from 'react';
import { readTerms, type TypedTerms } from '../../../app/jobs/typed-terms.ts';
import { termsWords } from '../../../app/jobs/warranty.ts';
import type { Settings } from '../../../app/shop/shop.contract.ts';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { WarrantyFields } from '../../frame/WarrantyFields.tsx';
import { useWrite } from '../../rpc/use-write.ts';
import { changed, KeepKey } from './KeepKey.tsx';
import styles from './SettingsForm.module.css';

export function UsualWarranty({ settings }: { settings: Settings }) {
  const write = useWrite('shop.changeSettings');
  const [typed, setTyped] = useState(() => asTyped(settings));
  const { decimalMark } = settings;
  const { terms, refusals } = readTerms(typed, decimalMark);
  const meant: Partial<Settings> =
    terms === null
      ? {}
      : {
          warrantyMonths: terms.months,
          warrantyDistance: terms.distance?.amount ?? null,
          warrantyDistanceUnit: typed.distanceUnit,
          warrantyPasses: terms.passes,
        };
  const differing = changed(meant, settings);
  const keep = () => {
    if (terms !== null) write.mutate(differing);
  };
  return (
    <EnterThrough label="Usual warranty" onFinish={keep} className={styles.form}>
      <div className={styles.wide}>
        <WarrantyFields value={typed} onChange={setTyped} refusals={refusals} />
      </div>
      <p className={styles.wide} role="status">
        {terms && `A unit leaves with ${termsWords(terms, decimalMark)}, unless its ticket says otherwise.`}
      </p>
      <div className={styles.wide}>
        <KeepKey write={write} isChanged={Object.keys(differing).length > 0} />
      </div>
    </EnterThrough>
  );
}

function asTyped({ warrantyMonths, warrantyDistance, warrantyDistanceUnit, warrantyPasses }: Settings): TypedTerms {
  const text = (count: number | null) => (count === null ? '' : String(count));
  return {
    months: text(warrantyMonths),
    distance: text(warrantyDistance),
    distanceUnit: warrantyDistanceUnit,
    passes: text(warrantyPasses),
  };
}
