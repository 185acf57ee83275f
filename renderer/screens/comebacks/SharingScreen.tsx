// What do they share: a batch, a plate, a gauge that was found out or a finding, and every delivered build that has it.
import { Link, useNavigate } from '@tanstack/react-router';
import type { SharedThing } from '../../../app/comebacks/calls.contract.ts';
import { SuggestField } from '../../components/SuggestField.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { useDraft } from '../../text/use-draft.ts';
import { BuildsThatShare } from './BuildsThatShare.tsx';
import styles from './Comebacks.module.css';
import { ComebacksTabs } from './ComebacksTabs.tsx';
import { sharedAddress } from './shared-address.ts';

export function SharingScreen({ of }: { of: SharedThing | null }) {
  return (
    <>
      <ComebacksTabs />
      {of ? <Sharing of={of} /> : <AskWhat />}
    </>
  );
}

function AskWhat() {
  const { file } = useOpenShop();
  const text = useDraft(`what they share: ${file}`, '');
  const offered = useRead('comebacks.suggestShared', { text: text.value.trim() }, { keepsLast: true });
  const likely = useRead('comebacks.suggestShared', { text: '' });
  const navigate = useNavigate();
  const suggestions = text.value.trim() === '' ? [] : (offered.data ?? []);
  return (
    <>
      <PageHead title="What do they share?" />
      <section className={styles.section} aria-label="What do they share?">
        <div className={styles.ask}>
          <SuggestField
            label="Batch, part number, plate, gauge or finding"
            autoFocus
            value={text.value}
            onChange={text.change}
            suggestions={suggestions.map(({ says, more }, index) => ({ id: index + 1, words: says, note: more }))}
            onTake={(id) => {
              const taken = suggestions[id - 1];
              if (!taken) return;
              text.clear();
              void navigate({ to: '/comebacks/sharing/$kind/$id', params: sharedAddress(taken.of) });
            }}
            hint={
              offered.isSuccess && text.value.trim() !== '' && suggestions.length === 0
                ? 'Nothing with these words went into a unit, was found out or was found.'
                : 'Only what went into a unit, a gauge that was found out, or what teardown found.'
            }
          />
        </div>
        <Loaded read={likely}>
          {(known) =>
            known.length > 0 && (
              <>
                <h2>Asked for most likely</h2>
                <ul className={styles.ways}>
                  {known.map(({ of, says, more }) => (
                    <li key={`${of.kind} ${sharedAddress(of).id}`}>
                      <Link to="/comebacks/sharing/$kind/$id" params={sharedAddress(of)}>
                        {says}
                      </Link>{' '}
                      <span className="small quiet">{more}</span>
                    </li>
                  ))}
                </ul>
              </>
            )
          }
        </Loaded>
      </section>
    </>
  );
}

function Sharing({ of }: { of: SharedThing }) {
  const sharing = useRead('comebacks.listSharing', { of });
  return <Loaded read={sharing}>{(known) => <BuildsThatShare key={known.title} of={of} sharing={known} />}</Loaded>;
}
