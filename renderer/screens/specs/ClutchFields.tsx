// The optional figures of a pack's clutch, behind one key: what the estimates on the ticket are made from.
import { useId } from 'react';
import { clutchFigureList, type Figure } from '../../../app/clutch/clutch-figures.ts';
import { Disclosure } from '../../components/Disclosure.tsx';
import styles from './ClutchFields.module.css';
import { TypedField } from './TypedField.tsx';
import { readClutch, type TypedClutch } from './typed-clutch.ts';
import type { Figures } from './typed-figures.ts';

type ClutchFieldsProps = {
  clutch: TypedClutch;
  figures: Figures;
  onChange: (clutch: TypedClutch) => void;
};

const groups: ReadonlyArray<{ readonly words: string; readonly has: (figure: Figure) => boolean }> = [
  { words: 'Piston and springs', has: ({ name }) => /^piston|^spring/.test(name) },
  { words: 'Torque it holds', has: ({ name }) => /^friction|^apply|^gear/.test(name) },
  { words: 'Fill and engagement', has: ({ name }) => /^flow|^inertia|^speed|^steel/.test(name) },
];

export function ClutchFields({ clutch, figures, onChange }: ClutchFieldsProps) {
  const id = useId();
  const { problems } = readClutch(clutch, figures);
  const isStated = Object.values(clutch).some((typed) => typed !== '');
  return (
    <Disclosure words="Clutch, for estimates" isOpenAtFirst={isStated}>
      <div className={styles.groups}>
        {groups.map(({ words, has }, index) => (
          <section key={words} aria-labelledby={`${id}-${index}`}>
            <h4 id={`${id}-${index}`}>{words}</h4>
            <div className={styles.fields}>
              {clutchFigureList.filter(has).map((figure) => (
                <TypedField
                  key={figure.name}
                  label={figure.label}
                  hint={figure.hint ?? ''}
                  unit={figure.quantity === 'ratio' ? '' : figure.unit[figures.lengthUnit]}
                  value={clutch[figure.name]}
                  onChange={(typed) => onChange({ ...clutch, [figure.name]: typed })}
                  problem={problems[figure.name]}
                />
              ))}
            </div>
          </section>
        ))}
      </div>
      <p className="small quiet">All of it may stay empty. The friction surfaces are counted from the slots.</p>
    </Disclosure>
  );
}
