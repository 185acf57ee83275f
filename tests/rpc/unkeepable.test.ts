// What no text holds is refused in words before it reaches the file.
import { expect, test } from 'vitest';
import { shopWithKx3 } from '../desk.ts';

test('NUL and half a surrogate pair are refused in words, in a search and in a name', async () => {
  const { call, refusal } = await shopWithKx3();
  const sentence = 'What was sent holds characters that no text has.';
  for (const text of ['a\0b', '\ud800']) {
    expect(await refusal('shop.findAnything', { text })).toMatchObject({ kind: 'refusal', message: sentence });
    expect(await refusal('shop.addPerson', { name: text, initials: 'X' })).toMatchObject({ message: sentence });
  }
  expect(await call('shop.getShop', {})).toMatchObject({ people: [{ initials: 'RA' }] });
  // A whole pair is a character like any other.
  await call('shop.addPerson', { name: 'Nell 🔧 Ibarra', initials: 'NI' });
});
