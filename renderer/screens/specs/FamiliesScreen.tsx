// The families of units this shop keeps a spec sheet for, and the line that adds one.
import { Link, useNavigate } from '@tanstack/react-router';
import { type RefObject, useCallback, useRef } from 'react';
import type { Output } from '../../../app/contract/contract.ts';
import { Button } from '../../components/Button.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { useLetterKey } from '../../frame/use-letter-key.ts';
import { refusalAbout } from '../../rpc/failures.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { AddLine } from './AddLine.tsx';
import styles from './FamiliesScreen.module.css';
import { useSheetDraft } from './sheet-draft.ts';
import { WorkedHint } from './WorkedHint.tsx';

type Family = Output<'specs.listFamilies'>[number];

export function FamiliesScreen() {
  const families = useRead('specs.listFamilies', {});
  const page = useRef<HTMLDivElement>(null);
  const goToName = useCallback(() => page.current?.querySelector('input')?.focus(), []);
  useLetterKey('n', goToName);
  const newKey = (
    <Button keyHint="N" onPress={goToName}>
      New family
    </Button>
  );
  return (
    <Loaded read={families}>
      {(list) =>
        list.length === 0 ? (
          <NoFamilies page={page} />
        ) : (
          <>
            <PageHead title="Specs" facts="families of units and their spec sheets" acts={newKey} />
            <div ref={page} className={styles.families}>
              <FamiliesTable families={list} />
              <AddFamily />
            </div>
          </>
        )
      }
    </Loaded>
  );
}

function NoFamilies({ page }: { page: RefObject<HTMLDivElement | null> }) {
  return (
    <>
      <title>Specs · Thoubook</title>
      <EmptyState title="No family has a spec sheet yet">
        A family is one kind of unit that is built to the same figures. Its sheet says what sits in each pack and what
        every check may read; every job of the family is measured against it.
      </EmptyState>
      <div ref={page} className={styles.families}>
        <AddFamily isFirst />
        <WorkedHint />
      </div>
    </>
  );
}

function FamiliesTable({ families }: { families: readonly Family[] }) {
  return (
    <Table label="Families">
      <thead>
        <tr>
          <ColumnHead>family</ColumnHead>
          <ColumnHead isNumber>revision</ColumnHead>
          <ColumnHead>used</ColumnHead>
          <ColumnHead isNumber>packs</ColumnHead>
          <ColumnHead isNumber>checks</ColumnHead>
          <ColumnHead isNumber>lists</ColumnHead>
          <ColumnHead isNumber>pictures</ColumnHead>
          <ColumnHead>draft</ColumnHead>
        </tr>
      </thead>
      <tbody>
        {families.map((family) => (
          <FamilyRow key={family.familyId} family={family} />
        ))}
      </tbody>
    </Table>
  );
}

function FamilyRow({ family }: { family: Family }) {
  const draft = useSheetDraft(family.familyId);
  const { packs, checks, lists, pictures } = family;
  const isBlank = packs + checks + lists + pictures === 0;
  return (
    <tr>
      <RowHead isStrong>
        <Link to="/specs/$familyId" params={{ familyId: String(family.familyId) }}>
          {family.name}
        </Link>
      </RowHead>
      <Cell isNumber>{family.revisionNumber}</Cell>
      <Cell isQuiet={!family.isFrozen}>
        {family.isFrozen ? 'in use by a job' : isBlank ? 'still blank' : 'not in use yet'}
      </Cell>
      <Cell isNumber>{packs}</Cell>
      <Cell isNumber>{checks}</Cell>
      <Cell isNumber>{lists}</Cell>
      <Cell isNumber>{pictures}</Cell>
      <Cell>{draft.value !== null && 'not saved yet'}</Cell>
    </tr>
  );
}

function AddFamily({ isFirst = false }: { isFirst?: boolean }) {
  const { file } = useOpenShop();
  const { person } = useAtBench();
  const navigate = useNavigate();
  const add = useWrite('specs.addFamily');
  const aboutName = refusalAbout('name', add.error);
  return (
    <>
      <AddLine
        label="New family"
        words={isFirst ? 'Start this family' : 'Add the family'}
        draftKey={`new family in ${file}`}
        refusal={aboutName}
        isFilled={isFirst}
        autoFocus={isFirst}
        onAdd={(name, taken) =>
          add.mutate(
            { name, by: person.personId },
            {
              onSuccess: ({ familyId }) => {
                taken();
                void navigate({ to: '/specs/$familyId/edit', params: { familyId: String(familyId) } });
              },
            },
          )
        }
      />
      <FailureSentence error={aboutName === null ? add.error : null} />
    </>
  );
}
