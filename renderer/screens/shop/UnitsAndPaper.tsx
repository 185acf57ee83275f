// The shop's name and how it writes: unit, decimal mark, paper, warranty; and the rule its verdicts follow.
import { useState } from 'react';
import type { Settings } from '../../../app/shop/shop.contract.ts';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { PaperChoice } from '../../components/PaperChoice.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useWrite } from '../../rpc/use-write.ts';
import { changed, KeepKey } from './KeepKey.tsx';
import { LengthUnitChoice } from './LengthUnitChoice.tsx';
import styles from './SettingsForm.module.css';

type Written = Pick<Settings, 'shopName' | 'lengthUnit' | 'decimalMark' | 'paper' | 'warranty'>;

export function UnitsAndPaper({ settings }: { settings: Settings }) {
  const { shopName, lengthUnit, decimalMark, paper, warranty } = settings;
  const [typed, setTyped] = useState<Written>({ shopName, lengthUnit, decimalMark, paper, warranty });
  const write = useWrite('shop.changeSettings');
  const change = (more: Partial<Written>) => setTyped({ ...typed, ...more });
  const meant = { ...typed, shopName: typed.shopName.trim(), warranty: typed.warranty.trim() };
  const differing = changed(meant, settings);
  const isNameless = meant.shopName === '';
  const keep = () => {
    if (!isNameless) write.mutate(differing);
  };
  return (
    <EnterThrough label="Name, units and paper" onFinish={keep} className={styles.form}>
      <div className={styles.wide}>
        <TextField
          label="Shop name"
          value={typed.shopName}
          onChange={(value) => change({ shopName: value })}
          refusal={isNameless ? 'Type the name that stands on your papers.' : null}
        />
      </div>
      <LengthUnitChoice
        value={typed.lengthUnit}
        onChange={(value) => change({ lengthUnit: value })}
        hint="What is already read is only shown anew: the book keeps it exactly."
      />
      <RadioGroup
        label="Decimals with"
        options={[
          { id: '.', words: 'a point, 4.5' },
          { id: ',', words: 'a comma, 4,5' },
        ]}
        value={typed.decimalMark}
        onChange={(value) => change({ decimalMark: value })}
      />
      <PaperChoice value={typed.paper} onChange={(value) => change({ paper: value })} />
      <div className={styles.wide}>
        <TextField
          label="Warranty"
          value={typed.warranty}
          onChange={(value) => change({ warranty: value })}
          maxLength={200}
          hint="One line at the foot of every build report. Empty: none is printed."
        />
      </div>
      <div className={styles.wide}>
        <KeepKey write={write} isChanged={Object.keys(differing).length > 0} />
      </div>
    </EnterThrough>
  );
}

const ruleSentences: Record<Settings['decisionRule'], string> = {
  simple: 'Inside the limits is in, outside is out, however small the margin; how sure it is stands beside it.',
  guarded: 'In only when it is inside by more than its ±, out only when outside by more; between, too close to call.',
};

/** How a reading against its limits becomes a verdict. */
export function DecisionRule({ settings }: { settings: Settings }) {
  const write = useWrite('shop.changeSettings');
  const [decisionRule, setRule] = useState(settings.decisionRule);
  const differing = changed({ decisionRule }, settings);
  return (
    <EnterThrough label="Verdicts" onFinish={() => write.mutate(differing)} className={styles.form}>
      <div className={styles.wide}>
        <RadioGroup
          label="A reading is in"
          options={[
            { id: 'guarded', words: 'when it is surely in' },
            { id: 'simple', words: 'when it reads in' },
          ]}
          value={decisionRule}
          onChange={setRule}
          hint={ruleSentences[decisionRule]}
        />
      </div>
      <div className={styles.wide}>
        <KeepKey write={write} isChanged={Object.keys(differing).length > 0} />
      </div>
    </EnterThrough>
  );
}
