// The setup card of a take, said in sentences.
import { unitWords } from '../../../app/charts/amounts.ts';
import type { DecimalMark } from '../../../app/quantities/format-amount.ts';
import type { Setup } from '../../../app/readings/readings.contract.ts';
import { waveWords } from '../../text/check-words.ts';

/** One sentence for each thing that was set up: dial, piston, air, plates, drum. */
export function setupSentences(setup: Setup, decimalMark: DecimalMark): readonly string[] {
  const { dialType, dialBase, dialFaceCounts, isPistonSeated, plates, waveState, isOpenEndUp, mark } = setup;
  const wave = waveWords(waveState);
  return [
    `${capitalised(dialType)} dial on the ${dialBase}, ${dialFaceCounts} counts to the turn.`,
    isPistonSeated ? 'Piston stroked and down.' : 'Piston not stroked.',
    airSentence(setup, decimalMark),
    `Plates ${plates}${wave === '' ? '' : `, ${wave}`}.`,
    `Open end ${isOpenEndUp ? 'up' : 'not up'}${mark === '' ? '' : `; the mark is the ${mark}`}.`,
  ].filter((sentence) => sentence !== '');
}

function airSentence({ air_pa, port }: Setup, decimalMark: DecimalMark): string {
  const at = port === '' ? '' : ` at port ${port}`;
  if (air_pa === null) return port === '' ? '' : `Port ${port}.`;
  return `Air ${unitWords('psi', decimalMark).short(air_pa)} psi${at}.`;
}

function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
