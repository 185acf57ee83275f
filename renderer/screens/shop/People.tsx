// Who works here: added, put at the bench, retired. What somebody did stays under their initials.
import { useState } from 'react';
import type { Person } from '../../../app/shop/shop.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { initialsOf } from './new-shop.ts';
import styles from './People.module.css';

export function People({ people }: { people: readonly Person[] }) {
  const working = people.filter((each) => !each.isRetired);
  const retired = people.filter((each) => each.isRetired);
  return (
    <>
      <Table label="People">
        <thead>
          <tr>
            <ColumnHead>initials</ColumnHead>
            <ColumnHead>name</ColumnHead>
            <ColumnHead>at the bench</ColumnHead>
            <ColumnHead />
          </tr>
        </thead>
        <tbody>
          {working.map((person) => (
            <PersonLine key={person.personId} person={person} />
          ))}
        </tbody>
      </Table>
      <AddPerson />
      {retired.length > 0 && (
        <p className="small quiet">
          No longer here: {retired.map((each) => `${each.name} (${each.initials})`).join(', ')}. What they recorded
          stays.
        </p>
      )}
    </>
  );
}

function PersonLine({ person }: { person: Person }) {
  const atBench = useAtBench();
  const isAtBench = atBench.person.personId === person.personId;
  return (
    <tr className={styles.person}>
      <RowHead isStrong>{person.initials}</RowHead>
      <Cell>{person.name}</Cell>
      <Cell>
        {isAtBench ? (
          <b>at the bench now</b>
        ) : (
          <Button onPress={() => atBench.choose(person.personId)} aria-label={`Put at the bench: ${person.name}`}>
            Put at the bench
          </Button>
        )}
      </Cell>
      <Cell isNumber>
        <Retire person={person} />
      </Cell>
    </tr>
  );
}

function Retire({ person }: { person: Person }) {
  const write = useWrite('shop.retirePerson');
  return (
    <PopoverDialog words="Retire…" title={`${person.name} no longer works here?`}>
      <p>What {person.initials} recorded stays in the book. This cannot be taken back.</p>
      <Button isPending={write.isPending} onPress={() => write.mutate({ personId: person.personId })}>
        {`Retire ${person.initials}`}
      </Button>
      <FailureSentence error={write.error} />
    </PopoverDialog>
  );
}

const nobody = { name: '', initials: '' };

function AddPerson() {
  const [typed, setTyped] = useState(nobody);
  const [isTried, setTried] = useState(false);
  const write = useWrite('shop.addPerson');
  const isNameless = typed.name.trim() === '';
  const add = () => {
    setTried(true);
    if (isNameless) return;
    const initials = typed.initials.trim() || initialsOf(typed.name.trim());
    write.mutate(
      { name: typed.name, initials },
      {
        onSuccess: () => {
          setTyped(nobody);
          setTried(false);
        },
      },
    );
  };
  const aboutInitials = refusalAbout('initials', write.error);
  return (
    <EnterThrough label="Add a person" onFinish={add} className={styles.add}>
      <TextField
        label="Name"
        value={typed.name}
        onChange={(name) => setTyped({ ...typed, name })}
        refusal={isTried && isNameless ? 'Type a name first.' : null}
      />
      <TextField
        label="Initials"
        value={typed.initials}
        onChange={(initials) => setTyped({ ...typed, initials })}
        placeholder={initialsOf(typed.name)}
        maxLength={4}
        refusal={aboutInitials}
      />
      <Button type="submit" isPending={write.isPending}>
        Add
      </Button>
      {aboutInitials === null && <FailureSentence error={write.error} />}
    </EnterThrough>
  );
}
