// What the report says of a clutch: an estimate on the shop's copy, nothing on the customer's.
import { expect, test } from 'vitest';
import { buildReport } from '../../app/papers/build-report.ts';
import { forwardPack, kx3 } from './kx3-report.ts';

const sentence = 'The piston starts at 15.3 psi plus seal drag.';
const said = (copy: 'shop' | 'customer', clutch: readonly string[]) =>
  JSON.stringify(buildReport({ ...kx3, copy, packs: [{ ...forwardPack, clutch }] }).blocks);

test('the shop’s copy says what the clutch comes to and that it is an estimate; the customer’s says nothing of it', () => {
  expect(said('shop', [sentence])).toContain('The clutch, an estimate: ');
  expect(said('shop', [sentence])).toContain(`${sentence} The maker’s manual comes first.`);
  expect(said('customer', [sentence])).not.toContain(sentence);
  expect(said('customer', [sentence])).not.toContain('an estimate');
  expect(said('shop', [])).not.toContain('The clutch');
});
