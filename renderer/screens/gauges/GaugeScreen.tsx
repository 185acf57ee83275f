// One gauge: what it is good for, whether it can be relied on, and every check of it.
import { useNavigate } from '@tanstack/react-router';
import { type ReactNode, useCallback, useState } from 'react';
import type { Output } from '../../../app/contract/contract.ts';
import { mayStandOffSquare } from '../../../app/gauges/gauge-kinds.ts';
import { standingWarning } from '../../../app/gauges/gauge-standing.ts';
import type { GaugeCheck } from '../../../app/gauges/register.contract.ts';
import { Button } from '../../components/Button.tsx';
import { Notice } from '../../components/Notice.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { GaugesTabs } from '../../frame/GaugesTabs.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { PageHead } from '../../frame/PageHead.tsx';
import { useLetterKey } from '../../frame/use-letter-key.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { sayBusinessDay } from '../../text/part-words.ts';
import { GaugeCheckForm } from './GaugeCheckForm.tsx';
import styles from './Gauges.module.css';
import { isDoubtful, standingWords } from './standing-words.ts';
import { type GaugeWords, useGaugeWords } from './use-gauge-words.ts';

type KnownGauge = Output<'gauges.getGauge'>;

export function GaugeScreen({ gaugeId }: { gaugeId: number }) {
  const gauge = useRead('gauges.getGauge', { gaugeId });
  return (
    <>
      <GaugesTabs />
      <Loaded read={gauge}>{(known) => <GaugePage key={known.gaugeId} gauge={known} />}</Loaded>
    </>
  );
}

function GaugePage({ gauge }: { gauge: KnownGauge }) {
  /** null: no form stands open; 'new', or the check that was misread. */
  const [checking, setChecking] = useState<'new' | GaugeCheck | null>(null);
  const navigate = useNavigate();
  const gaugeId = String(gauge.gaugeId);
  useLetterKey(
    'c',
    useCallback(() => setChecking('new'), []),
  );
  useLetterKey(
    'e',
    useCallback(() => void navigate({ to: '/gauges/$gaugeId/edit', params: { gaugeId } }), [navigate, gaugeId]),
  );
  const warning = gauge.isRetired ? null : standingWarning(gauge.tag, gauge.standing);
  return (
    <>
      <PageHead
        title={gauge.tag}
        facts={
          <>
            <span>{gauge.kind}</span>
            <span className={isDoubtful(gauge) ? styles.doubtful : 'quiet'}>{standingWords(gauge)}</span>
          </>
        }
      />
      <div className={styles.keys}>
        {checking === null && (
          <Button kind="filled" keyHint="C" onPress={() => setChecking('new')}>
            Check it
          </Button>
        )}
        <LinkKey to="/gauges/$gaugeId/edit" params={{ gaugeId }} keyHint="E">
          Edit
        </LinkKey>
        <LinkKey to="/stock/labels" search={{ of: `gauge:${gaugeId}` }}>
          Print its label
        </LinkKey>
        <RetireKey gauge={gauge} />
      </div>
      {warning && (
        <div className={styles.section}>
          <Notice>{warning}</Notice>
        </div>
      )}
      {checking !== null && (
        <GaugeCheckForm
          key={checking === 'new' ? 'new' : checking.gaugeCheckId}
          gauge={gauge}
          misread={checking === 'new' ? null : checking}
          onDone={() => setChecking(null)}
          onLeave={() => setChecking(null)}
        />
      )}
      <GaugeFacts gauge={gauge} />
      <section className={styles.section} aria-label="Checks">
        <h2>Checks</h2>
        {gauge.checks.length === 0 ? (
          <p className="quiet">None yet. Press C with the blocks at hand.</p>
        ) : (
          gauge.checks.map((check) => (
            <CheckOfGauge key={check.gaugeCheckId} gauge={gauge} check={check} onMisread={() => setChecking(check)} />
          ))
        )}
      </section>
    </>
  );
}

function GaugeFacts({ gauge }: { gauge: KnownGauge }) {
  const words = useGaugeWords(gauge.unit);
  const permitted =
    gauge.permittedError === null
      ? 'not stated'
      : `± ${words.bare(gauge.permittedError)} ${words.unit}${gauge.statedIn === '' ? '' : `, ${gauge.statedIn}`}`;
  return (
    <dl className={styles.facts}>
      <Fact name="Reads to">
        {words.bare(gauge.resolution)} {words.unit}
      </Fact>
      <Fact name="Permitted error">{permitted}</Fact>
      {mayStandOffSquare(gauge.kind) && <Fact name="Out of square by at most">{gauge.offSquareDegrees}°</Fact>}
      {gauge.serial !== '' && <Fact name="Serial">{gauge.serial}</Fact>}
      <Fact name="Checked every">{gauge.intervalDays === null ? 'no interval set' : `${gauge.intervalDays} days`}</Fact>
      <Fact name="Has read">{gauge.takes === 1 ? '1 check of a unit' : `${gauge.takes} checks of units`}</Fact>
    </dl>
  );
}

function Fact({ name, children }: { name: string; children: ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}

function CheckOfGauge({ gauge, check, onMisread }: { gauge: KnownGauge; check: GaugeCheck; onMisread: () => void }) {
  const words = useGaugeWords(gauge.unit);
  const isSuperseded = check.supersededById !== null;
  return (
    <section className={styles.check} aria-label={`Check of ${sayBusinessDay(check.checkedOn)}`}>
      <p className={isSuperseded ? 'quiet' : undefined}>
        <b>{sayBusinessDay(check.checkedOn)}</b> against {check.against}, {check.by}: {foundWords(check, words)}
        {check.note !== '' && ` ${check.note}.`}
        {check.reason !== '' && ` In place of a misread one: ${check.reason}.`}
        {isSuperseded && ' Misread, no longer counts.'}
      </p>
      {!isSuperseded && (
        <>
          <div className={styles.points}>
            <Table label={`Points of ${sayBusinessDay(check.checkedOn)}`} density="dense">
              <thead>
                <tr>
                  <ColumnHead>should say</ColumnHead>
                  {check.points.map((point, index) => (
                    // biome-ignore lint/suspicious/noArrayIndexKey: a point is known by its place alone
                    <ColumnHead key={index} isNumber>
                      {words.bare(point.nominal)}
                    </ColumnHead>
                  ))}
                </tr>
              </thead>
              <tbody>
                <tr>
                  <RowHead>said, {words.unit}</RowHead>
                  {check.points.map((point, index) => (
                    // biome-ignore lint/suspicious/noArrayIndexKey: a point is known by its place alone
                    <Cell key={index} isNumber>
                      {words.bare(point.read)}
                    </Cell>
                  ))}
                </tr>
                <tr>
                  <RowHead>error</RowHead>
                  {check.points.map((point, index) => (
                    // biome-ignore lint/suspicious/noArrayIndexKey: a point is known by its place alone
                    <Cell key={index} isNumber isStrong={isBeyond(point.error, check)}>
                      {words.signed(point.error)}
                    </Cell>
                  ))}
                </tr>
              </tbody>
            </Table>
          </div>
          <div className={styles.checkKeys}>
            <Button onPress={onMisread}>Misread</Button>
            {check.isWithin === false && (
              <LinkKey to="/gauges/touched/$gaugeCheckId" params={{ gaugeCheckId: String(check.gaugeCheckId) }}>
                What it read since it was good
              </LinkKey>
            )}
          </div>
        </>
      )}
    </section>
  );
}

function isBeyond(error: number, { permittedError }: GaugeCheck): boolean {
  return permittedError !== null && Math.abs(error) > permittedError;
}

function foundWords({ worst, isWithin, permittedError }: GaugeCheck, words: GaugeWords): string {
  const off = worst === 0 ? 'no error at any point' : `${words.signed(worst)} ${words.unit} at the worst`;
  if (isWithin === null || permittedError === null) return `${off}; no permitted error was stated.`;
  const permitted = `permitted ± ${words.bare(permittedError)}`;
  return isWithin ? `inside, ${off}, ${permitted}.` : `found out, ${off}, ${permitted}.`;
}

/** A retired gauge keeps its readings; it is only not offered any more. */
function RetireKey({ gauge }: { gauge: KnownGauge }) {
  const { person } = useAtBench();
  const write = useWrite('gauges.retireGauge');
  const retire = () => write.mutate({ gaugeId: gauge.gaugeId, isRetired: !gauge.isRetired, by: person.personId });
  return (
    <>
      <Button isPending={write.isPending} onPress={retire}>
        {gauge.isRetired ? 'Use it again' : 'Retire'}
      </Button>
      <FailureSentence error={write.error} />
    </>
  );
}
