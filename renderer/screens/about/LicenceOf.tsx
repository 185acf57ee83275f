// One part with its licence, whose text is looked up when it is opened.
import { useState } from 'react';
import type { Part } from '../../../app/about/about.contract.ts';
import { Disclosure } from '../../components/Disclosure.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useRead } from '../../rpc/use-read.ts';
import styles from './AboutScreen.module.css';

export function LicenceOf({ part: { name, version, licence } }: { part: Part }) {
  const [isOpen, setOpen] = useState(false);
  const read = useRead('about.getLicence', isOpen ? { name, version } : null);
  return (
    <Disclosure words={`${name} ${version}: ${licence || 'see its text'}`} onOpenChange={setOpen}>
      {isOpen && (
        <Loaded read={read}>
          {({ text }) => <p className={styles.text}>{text || 'Its package brings no text of its own.'}</p>}
        </Loaded>
      )}
    </Disclosure>
  );
}
