// Logging a comeback: which build, on which ticket, what the customer says, and whether it is covered.
import { useNavigate } from '@tanstack/react-router';
import { useCallback, useState } from 'react';
import type { BuildToHold } from '../../../app/comebacks/log.contract.ts';
import type { Input } from '../../../app/contract/contract.ts';
import type { DecimalMark } from '../../../app/quantities/format-amount.ts';
import { labelCode } from '../../../app/stock/label-code.ts';
import { CoveredEntry, type CoveredTyped } from '../../comebacks/CoveredEntry.tsx';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { FormKeys } from '../../components/FormKeys.tsx';
import { FormSection } from '../../components/FormSection.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { Refused, refusalAbout } from '../../rpc/failures.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { sayDay, today } from '../../text/say-date.ts';
import { useDraft } from '../../text/use-draft.ts';
import { BuildEntry, ChosenBuild } from './BuildEntry.tsx';
import { ComebacksTabs } from './ComebacksTabs.tsx';
import { ReturnEntry } from './ReturnEntry.tsx';
import { distanceTyped, type ReturnDraft, returnRefusals } from './return-draft.ts';

type LogDraft = Omit<ReturnDraft, 'customerSays' | 'distanceUnit'> &
  CoveredTyped & {
    readonly text: string;
    readonly builtJobId: number | null;
    /** `new`: one is opened; null: nothing chosen yet. */
    readonly ticket: number | 'new' | null;
    readonly caseTag: string;
    /** null: not typed yet, so the ticket's own words stand. */
    readonly customerSays: string | null;
    /** null: not chosen yet, so it is counted as it was at delivery. */
    readonly distanceUnit: ReturnDraft['distanceUnit'] | null;
  };

/** `of` and `ticket` name the build and the open ticket it is logged from. */
export function LogComebackScreen({ of, ticket }: { of: number | null; ticket: number | null }) {
  return (
    <>
      <ComebacksTabs />
      <PageHead title="Log a comeback" />
      <LogForm key={`${of} ${ticket}`} of={of} ticket={ticket} />
    </>
  );
}

function LogForm({ of, ticket }: { of: number | null; ticket: number | null }) {
  const { file, settings } = useOpenShop();
  const { person } = useAtBench();
  const navigate = useNavigate();
  const write = useWrite('comebacks.logComeback');
  const [isTried, setTried] = useState(false);
  const {
    value: draft,
    change: keep,
    clear,
  } = useDraft<LogDraft>(`log a comeback: ${file}, of ${of} on ${ticket}`, {
    text: '',
    builtJobId: of,
    ticket,
    caseTag: '',
    cameBackOn: today(),
    distance: '',
    distanceUnit: null,
    customerSays: null,
    covered: 'not decided yet',
    coveredNote: '',
  });
  const change = (more: Partial<LogDraft>) => keep({ ...draft, ...more });
  const take = useCallback((build: BuildToHold) => keep({ ...draft, builtJobId: build.jobId }), [draft, keep]);
  const build = useBuild(draft.builtJobId);
  const typed = build && typedAs(draft, build);
  const { decimalMark } = settings;
  const refusals = isTried && typed ? returnRefusals(typed, decimalMark) : {};
  const aboutDay = refusalAbout('cameBackOn', write.error);
  const log = () => {
    setTried(true);
    const input = build && inputOf(draft, build, decimalMark, person.personId);
    if (!input || write.isPending) return;
    write.mutate(input, {
      onSuccess: ({ comebackId }) => {
        clear();
        void navigate({ to: '/comebacks/$comebackId', params: { comebackId: String(comebackId) } });
      },
    });
  };
  return (
    <EnterThrough label="Log a comeback" onFinish={log}>
      <FormSection title="Build" about="The job the unit left with. Every unit that was handed over can be found.">
        {build && <ChosenBuild build={build} onLeave={() => change({ builtJobId: null, ticket: null, text: '' })} />}
        {draft.builtJobId === null && (
          <BuildEntry
            text={draft.text}
            onType={(text) => change({ text })}
            onTake={take}
            refusal={isTried ? 'Choose the build that came back.' : undefined}
          />
        )}
      </FormSection>
      {build && typed && (
        <>
          <FormSection title="Ticket" about="Everything found on the unit is written down on a ticket of its own.">
            <TicketEntry build={build} draft={draft} onChange={change} />
          </FormSection>
          <FormSection title="At return" about="In the customer’s words, before anything comes apart.">
            <ReturnEntry
              value={typed}
              onChange={change}
              refusals={{ ...refusals, ...(aboutDay !== null && { cameBackOn: aboutDay }) }}
              autoFocus
            />
          </FormSection>
          <FormSection title="Warranty" about="The rule is only shown; who decides is you, now or later.">
            <CoveredEntry
              left={build.left}
              now={{ day: draft.cameBackOn, distance: distanceTyped(typed, decimalMark) }}
              value={draft}
              onChange={({ covered, coveredNote }) => change({ covered, coveredNote })}
            />
          </FormSection>
        </>
      )}
      <FormKeys>
        <Button type="submit" kind="filled" keyHint="Ctrl Enter" isPending={write.isPending}>
          Log the comeback
        </Button>
        {!(write.error instanceof Refused && write.error.field === 'cameBackOn') && (
          <FailureSentence error={write.error} />
        )}
      </FormKeys>
    </EnterThrough>
  );
}

type TicketEntryProps = { build: BuildToHold; draft: LogDraft; onChange: (more: Partial<LogDraft>) => void };

function TicketEntry({ build, draft, onChange }: TicketEntryProps) {
  const ticket = ticketOf(draft, build);
  return (
    <>
      {build.openTickets.length === 0 ? (
        <p>A new ticket is opened for it.</p>
      ) : (
        <RadioGroup
          label="It is logged on"
          options={[
            ...build.openTickets.map(({ jobId, number, openedAt }) => ({
              id: String(jobId),
              words: `job ${number}, open since ${sayDay(openedAt)}`,
            })),
            { id: 'new', words: 'a new ticket' },
          ]}
          value={ticket === null ? 'new' : String(ticket.jobId)}
          onChange={(id) => onChange({ ticket: id === 'new' ? 'new' : Number(id) })}
        />
      )}
      {ticket === null && (
        <TextField
          label="Case tag"
          value={draft.caseTag}
          onChange={(caseTag) => onChange({ caseTag })}
          maxLength={200}
        />
      )}
    </>
  );
}

/** The build of this job as it stands in the book now. */
function useBuild(jobId: number | null): BuildToHold | null {
  const read = useRead('comebacks.findBuilds', jobId === null ? null : { text: labelCode({ kind: 'job', jobId }) });
  return (jobId !== null && read.data?.find((each) => each.jobId === jobId)) || null;
}

/** The open ticket it is logged on, most likely the newest; null: a new one. */
function ticketOf({ ticket }: LogDraft, { openTickets }: BuildToHold): BuildToHold['openTickets'][number] | null {
  if (ticket === 'new') return null;
  return openTickets.find(({ jobId }) => jobId === ticket) ?? openTickets[0] ?? null;
}

function typedAs(draft: LogDraft, build: BuildToHold): ReturnDraft {
  return {
    ...draft,
    customerSays: draft.customerSays ?? ticketOf(draft, build)?.complaint ?? '',
    distanceUnit: draft.distanceUnit ?? build.left.distanceAtDelivery?.unit ?? 'miles',
  };
}

function inputOf(
  draft: LogDraft,
  build: BuildToHold,
  decimalMark: DecimalMark,
  by: number,
): Input<'comebacks.logComeback'> | null {
  const typed = typedAs(draft, build);
  if (Object.keys(returnRefusals(typed, decimalMark)).length > 0) return null;
  const { cameBackOn, customerSays } = typed;
  const { caseTag, covered, coveredNote } = draft;
  const distance = distanceTyped(typed, decimalMark);
  const ticket = ticketOf(draft, build);
  const checkIn = {
    customer: { customerId: build.customer.customerId },
    unit: { unitId: build.unit.unitId },
    complaint: customerSays,
    caseTag,
    distance,
  };
  return {
    builtJobId: build.jobId,
    ticket: ticket === null ? { checkIn } : { jobId: ticket.jobId },
    cameBackOn,
    customerSays,
    distance,
    covered,
    coveredNote,
    by,
  };
}
