// The clutch of a pack on a job: what pushes it, what it holds, what fills it, each beside what it was worked out from.
import { Link } from '@tanstack/react-router';
import type { ClutchOfJob } from '../../../app/clutch/clutch.contract.ts';
import { steelSpecificHeat_J_kgK } from '../../../app/clutch/clutch-estimate.ts';
import { type ClutchWords, clutchWords } from '../../../app/clutch/clutch-words.ts';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Notice } from '../../components/Notice.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import styles from './ClutchScreen.module.css';
import { Figure, Section } from './ClutchSection.tsx';
import { FillOfClutch } from './FillOfClutch.tsx';
import { LoadForm } from './LoadForm.tsx';
import { useFigures } from './use-figures.ts';

export function ClutchScreen({ jobId, packId }: { jobId: number; packId: number }) {
  const isNumbered = Number.isInteger(jobId) && jobId > 0 && Number.isInteger(packId) && packId > 0;
  const read = useRead('clutch.getClutch', isNumbered ? { jobId, packId } : null);
  if (read.data === undefined && (read.error || !isNumbered)) {
    return (
      <EmptyState title={read.error?.message ?? 'There is no such pack.'}>
        <Link to="/jobs">To the jobs</Link>
      </EmptyState>
    );
  }
  return <Loaded read={read}>{(clutch) => <Clutch jobId={jobId} clutch={clutch} />}</Loaded>;
}

function Clutch({ jobId, clutch }: { jobId: number; clutch: ClutchOfJob }) {
  const { settings } = useOpenShop();
  const words = clutchWords(settings);
  return (
    <>
      <PageHead
        title={`The clutch: ${clutch.packName}`}
        facts={
          <span>
            <Link to="/jobs/$jobId" params={{ jobId: String(jobId) }}>
              Job {clutch.jobNumber}
            </Link>
            , {clutch.familyName} sheet {clutch.revisionNumber}
          </span>
        }
        acts={
          <LinkKey to="/specs/$familyId/edit" params={{ familyId: String(clutch.familyId) }}>
            Its figures in Specs
          </LinkKey>
        }
      />
      <p className={styles.estimate}>
        <b>All of this is an estimate</b> from the figures the shop stated. The maker’s manual comes first.
      </p>
      <div className={styles.sections}>
        <Piston clutch={clutch} words={words} />
        <Torque jobId={jobId} clutch={clutch} words={words} />
        <FillOfClutch clutch={clutch} words={words} />
        <Engagement clutch={clutch} words={words} />
      </div>
    </>
  );
}

type Part = { readonly clutch: ClutchOfJob; readonly words: ClutchWords };

function Piston({ clutch, words }: Part) {
  const { piston } = clutch.estimate;
  const figure = useFigures(clutch);
  const pressure = words.pressure(clutch.checkingPressure_Pa, 0);
  return (
    <Section title="Piston" of={clutch} waits={piston}>
      {piston.known && (
        <>
          <dl className={styles.figures}>
            <Figure name="starts at" value={words.pressure(piston.known.startingPressure_Pa)}>
              springs {figure('springs_mN')} over {words.area(piston.known.area_m2)}; seal drag comes on top
            </Figure>
            <Figure name={`${pressure} push with`} value={words.force(piston.known.checkingForce_N)}>
              {pressure} on {words.area(piston.known.area_m2)}, piston {figure('pistonOutside_nm')} by{' '}
              {figure('pistonInside_nm')};{' '}
              {clutch.isPressureOnCard ? 'as on the setup card' : 'the usual pressure of a check'}
            </Figure>
            <Figure name="net of the springs" value={words.force(piston.known.checkingNet_N)}>
              less {figure('springs_mN')}
            </Figure>
          </dl>
          <Notice kind="caution">
            Hand off before air: {pressure} close this piston with about {words.force(piston.known.checkingForce_N)}.
          </Notice>
        </>
      )}
    </Section>
  );
}

function Torque({ jobId, clutch, words }: Part & { jobId: number }) {
  const { torque } = clutch.estimate;
  const figure = useFigures(clutch);
  const share = figure('gearShare_millionths');
  return (
    <Section title="Torque it holds" of={clutch} waits={torque}>
      {torque.known && (
        <dl className={styles.figures}>
          <Figure name="by uniform wear" value={words.torque(torque.known.wear_Nm)}>
            {figure('friction_millionths')} friction × {words.force(torque.known.force_N)} × {clutch.surfaces} surfaces;
            lining {figure('frictionOutside_nm')} by {figure('frictionInside_nm')}
          </Figure>
          <Figure name="by uniform pressure" value={words.torque(torque.known.pressure_Nm)}>
            the same, new linings; pressed by {figure('applyPressure_Pa')} less the springs
          </Figure>
          {torque.known.asked_Nm !== null && torque.known.wearMargin !== null && (
            <>
              <Figure name="asked of it" value={words.torque(torque.known.asked_Nm)}>
                engine × converter × share {share}
              </Figure>
              <Figure name="margin" value={`${words.number(torque.known.wearMargin, 2)} times`}>
                {torque.known.wearMargin < 1
                  ? 'It holds less than is asked of it'
                  : 'It holds more than is asked of it'}
                , by uniform wear; {words.number(torque.known.pressureMargin ?? 0, 2)} by uniform pressure
              </Figure>
            </>
          )}
        </dl>
      )}
      {torque.known && share === '' && (
        <p className="quiet">For the margin, state in Specs what share of the torque this clutch carries.</p>
      )}
      <LoadForm key={clutch.load?.at ?? ''} jobId={jobId} load={clutch.load} />
    </Section>
  );
}

function Engagement({ clutch, words }: Part) {
  const { shift } = clutch.estimate;
  const figure = useFigures(clutch);
  return (
    <Section title="One engagement" of={clutch} waits={shift}>
      {shift.known && (
        <dl className={styles.figures}>
          <Figure name="turned into heat" value={words.energy(shift.known.energy_J)}>
            {figure('inertia1_mg_m2')} at {figure('speed1_rpm')}, {figure('inertia2_mg_m2')} at {figure('speed2_rpm')}
          </Figure>
          <Figure name="slips for" value={words.time(shift.known.slipTime_s)}>
            at the torque it holds by uniform wear
          </Figure>
          <Figure name="steels warm by" value={words.rise(shift.known.temperatureRise_K)}>
            all of it into {figure('steelMass_mg')} of steel, {steelSpecificHeat_J_kgK} J/(kg·K)
          </Figure>
        </dl>
      )}
    </Section>
  );
}
