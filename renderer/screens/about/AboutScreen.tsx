// The program itself: what runs, what to send to whoever helps, and the licences of its parts.
import type { Output } from '../../../app/contract/contract.ts';
import { FormSection } from '../../components/FormSection.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import styles from './AboutScreen.module.css';
import { Diagnostics } from './Diagnostics.tsx';
import { LicenceOf } from './LicenceOf.tsx';

export function AboutScreen() {
  return <Loaded read={useRead('about.getAbout', {})}>{(about) => <About about={about} />}</Loaded>;
}

function About({ about }: { about: Output<'about.getAbout'> }) {
  const { version, runsOn, folder, faultLog, parts } = about;
  return (
    <>
      <PageHead title="About Thoubook" facts={<span>version {version}</span>} />
      <FormSection title="What runs" about="The shop book of a transmission rebuilder. It works without a network.">
        <p>
          Version {version} on {runsOn}
        </p>
        <p>
          Your shop file, its photos and its backups lie in <span className={styles.path}>{folder}</span>
        </p>
      </FormSection>
      <FormSection
        title="When something is wrong"
        about="A fault is a bug of ours: nothing of what it broke off was written. Diagnostics are a text of versions, sizes and counts, without a name, a number or a reading of the shop. Look it through before you send it; nothing is sent by itself."
      >
        <Diagnostics faultLog={faultLog} />
      </FormSection>
      <FormSection
        title="Licences"
        about="Thoubook is free under the MIT licence and comes without warranty. It is built of the parts listed here, each under its own."
      >
        {parts.length === 0 && <p>This copy runs from its source: the parts are listed once it is built.</p>}
        <ul className={styles.parts}>
          {parts.map((part) => (
            <li key={`${part.name} ${part.version}`}>
              <LicenceOf part={part} />
            </li>
          ))}
        </ul>
      </FormSection>
    </>
  );
}
