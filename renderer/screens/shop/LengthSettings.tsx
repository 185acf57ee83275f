// A group of lengths the shop has set, each typed as text in the shop's unit, with what it means behind Why.
import { useState } from 'react';
import type { Settings } from '../../../app/shop/shop.contract.ts';
import { Disclosure } from '../../components/Disclosure.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useWrite } from '../../rpc/use-write.ts';
import { changed, KeepKey } from './KeepKey.tsx';
import { type LengthName, type LengthSetting, readLength, showLength } from './length-settings.ts';
import styles from './SettingsForm.module.css';

type LengthSettingsProps = {
  label: string;
  lengths: readonly LengthSetting[];
  settings: Settings;
  /** Asks too how many repeat reads the repeat figures rest on. */
  asksReadsBehind?: boolean;
  /** What the shop's own readings say of a length, one sentence each. */
  learned?: Partial<Record<LengthName, string>>;
};

/** An entry nobody touched shows what is set; only what is typed is kept here. */
type Typed = Partial<Record<LengthName | 'readsBehind', string>>;

export function LengthSettings({
  label,
  lengths,
  settings,
  asksReadsBehind = false,
  learned = {},
}: LengthSettingsProps) {
  const write = useWrite('shop.changeSettings');
  const [typed, setTyped] = useState<Typed>({});
  const readings = lengths.map((setting) => ({ setting, length: readTyped(typed, setting, settings) }));
  const readsBehind = readCount(typed.readsBehind ?? String(settings.repeatabilityDegreesOfFreedom));
  const meant: Partial<Settings> = Object.fromEntries(
    readings.flatMap(({ setting, length }) => (length.ok ? [[setting.name, length.value]] : [])),
  );
  if (asksReadsBehind && readsBehind !== null) meant.repeatabilityDegreesOfFreedom = readsBehind;
  const differing = changed(meant, settings);
  const isRefused = readings.some(({ length }) => !length.ok) || (asksReadsBehind && readsBehind === null);
  const keep = () => {
    if (!isRefused) write.mutate(differing, { onSuccess: () => setTyped({}) });
  };
  return (
    <EnterThrough label={label} onFinish={keep} className={styles.form}>
      {readings.map(({ setting, length }) => (
        <div key={setting.name}>
          <TextField
            label={setting.label}
            value={typed[setting.name] ?? showLength(settings[setting.name], settings)}
            onChange={(value) => setTyped({ ...typed, [setting.name]: value })}
            unit={settings.lengthUnit}
            hint={setting.hint}
            refusal={length.ok ? null : length.refusal.message}
          />
          {learned[setting.name] && <p className="small">{learned[setting.name]}</p>}
          {setting.why && (
            <Disclosure words="Why">
              <p className="small">{setting.why}</p>
            </Disclosure>
          )}
        </div>
      ))}
      {asksReadsBehind && (
        <div>
          <TextField
            label="The three repeat figures rest on"
            value={typed.readsBehind ?? String(settings.repeatabilityDegreesOfFreedom)}
            onChange={(value) => setTyped({ ...typed, readsBehind: value })}
            unit="repeats"
            hint="How many readings, less one for each spot that was read."
            refusal={readsBehind === null ? 'Type a whole number of 1 or more.' : null}
          />
          <Disclosure words="Why">
            <p className="small">
              The degrees of freedom behind those standard deviations: the fewer there are, the wider every ± is drawn
              (Student’s t).
            </p>
          </Disclosure>
        </div>
      )}
      <div className={styles.wide}>
        <KeepKey write={write} isChanged={Object.keys(differing).length > 0 || isRefused} />
      </div>
    </EnterThrough>
  );
}

function readTyped(typed: Typed, setting: LengthSetting, settings: Settings) {
  const text = typed[setting.name];
  // What stands there untouched is what is set, whatever it was rounded to for the eye.
  if (text === undefined) return { ok: true as const, value: settings[setting.name] };
  return readLength(text, setting, settings);
}

function readCount(typed: string): number | null {
  const text = typed.trim();
  return /^[1-9]\d{0,5}$/.test(text) ? Number(text) : null;
}
