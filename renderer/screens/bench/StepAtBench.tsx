// Which step is on the screen.
import type { Go, Step } from './bench-step.ts';
import { CorrectHeightStep } from './CorrectHeightStep.tsx';
import { KeepStep } from './KeepStep.tsx';
import { LooseSteelsStep } from './LooseSteelsStep.tsx';
import { MockUpsStep } from './MockUpsStep.tsx';
import { OwnSwapStep } from './OwnSwapStep.tsx';
import { PackContentsStep } from './PackContentsStep.tsx';
import { ReadStep } from './ReadStep.tsx';
import { RedoStep } from './RedoStep.tsx';
import { ResultStep } from './ResultStep.tsx';
import { ResumeStep } from './ResumeStep.tsx';
import { RingStep } from './RingStep.tsx';
import { SeatStep } from './SeatStep.tsx';
import { SetUpStep } from './SetUpStep.tsx';
import { SwapStep } from './SwapStep.tsx';
import { SwapsStep } from './SwapsStep.tsx';
import { WasherStep } from './WasherStep.tsx';

export function StepAtBench({ step, go }: { step: Step; go: Go }) {
  switch (step.at) {
    case 'set up':
      return <SetUpStep go={go} />;
    case 'ring':
      return <RingStep plan={step.plan} go={go} />;
    case 'seat':
      return <SeatStep plan={step.plan} go={go} />;
    case 'resume':
      return <ResumeStep go={go} />;
    case 'read':
      return <ReadStep step={step} go={go} />;
    case 'redo':
      return <RedoStep step={step} go={go} />;
    case 'result':
      return <ResultStep go={go} />;
    case 'contents':
      return <PackContentsStep go={go} />;
    case 'mock-ups':
      return <MockUpsStep back={step.back} go={go} />;
    case 'swaps':
      return <SwapsStep go={go} />;
    case 'swap':
      return <SwapStep changes={step.changes} go={go} />;
    case 'own swap':
      return <OwnSwapStep go={go} />;
    case 'loose':
      return <LooseSteelsStep go={go} />;
    case 'correct':
      return <CorrectHeightStep step={step} go={go} />;
    case 'washer':
      return <WasherStep go={go} />;
    case 'keep':
      return <KeepStep go={go} />;
  }
}
