// This version of the program and what is known of a newer one. Nothing is shown where it is not updated by itself.
import type { UpdateStanding, Updates as UpdatesRead } from '../../../app/updates/updates.contract.ts';
import { Button } from '../../components/Button.tsx';
import { Disclosure } from '../../components/Disclosure.tsx';
import { FormSection } from '../../components/FormSection.tsx';
import { Notice } from '../../components/Notice.tsx';
import { TextField } from '../../components/TextField.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { refusalAbout } from '../../rpc/failures.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { sayDayAndTime } from '../../text/say-date.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './Updates.module.css';

export function Updates() {
  const { data: updates } = useRead('updates.getUpdates', {});
  if (!updates) return null;
  const { version, standing, keptBack } = updates;
  return (
    <FormSection
      title="Version"
      about="Thoubook asks the network nothing of itself. Where an address is named here, that one is asked once a day whether there is a newer version."
    >
      <p>
        Version {version} — updates: {wordsOf(standing)}
      </p>
      {keptBack !== '' && <Notice>{keptBack}</Notice>}
      {standing.kind === 'offered' && <Offer version={standing.version} notes={standing.notes} />}
      <Disclosure words="Where updates come from">
        <Address key={updates.feed} updates={updates} />
      </Disclosure>
    </FormSection>
  );
}

function wordsOf(standing: UpdateStanding): string {
  switch (standing.kind) {
    case 'no feed':
      return 'no address is named, none is looked for.';
    case 'looking':
      return 'looking…';
    case 'newest':
      return `this is the newest, looked ${sayDayAndTime(standing.lookedAt)}.`;
    case 'offered':
      return `version ${standing.version} is there.`;
    case 'fetching':
      return `version ${standing.version} is coming in, ${standing.hundredths} %.`;
    case 'fetched':
      return `version ${standing.version} takes its place when this window is closed, after a backup.`;
    case 'failed':
      return standing.why;
  }
}

function Offer({ version, notes }: { version: string; notes: string }) {
  const write = useWrite('updates.fetchVersion');
  return (
    <>
      {notes !== '' && (
        <Notice>
          <span className={styles.notes}>{notes}</span>
        </Notice>
      )}
      <p className="small quiet">It takes the place of this one when the window is closed, after a backup.</p>
      <Button isPending={write.isPending} onPress={() => write.mutate({ version })}>
        {`Fetch version ${version}`}
      </Button>
      <FailureSentence error={write.error} />
    </>
  );
}

function Address({ updates: { feed, standing } }: { updates: UpdatesRead }) {
  const write = useWrite('updates.nameFeed');
  const look = useWrite('updates.look');
  const kept = feed ?? '';
  const typed = useDraft('where updates come from', kept);
  return (
    <form
      noValidate
      className={styles.entry}
      onSubmit={(event) => {
        event.preventDefault();
        write.mutate({ address: typed.value }, { onSuccess: typed.clear });
      }}
    >
      <TextField
        label="Address"
        hint="Of somebody you trust as you trust this program: what lies there will run on this machine. Empty: none."
        value={typed.value}
        onChange={typed.change}
        maxLength={1000}
        refusal={refusalAbout('address', write.error)}
      />
      <div className={styles.keys}>
        <Button type="submit" isDisabled={typed.value === kept} isPending={write.isPending}>
          Ask this address
        </Button>
        {feed !== null && (
          <Button isDisabled={standing.kind === 'looking'} isPending={look.isPending} onPress={() => look.mutate({})}>
            Look now
          </Button>
        )}
      </div>
      {refusalAbout('address', write.error) === null && <FailureSentence error={write.error ?? look.error} />}
    </form>
  );
}
