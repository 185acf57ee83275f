// The calculator console, run as a person runs it.
import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { explain } from '../../main/shells/headless/calculator/explain.ts';
import { computations } from '../../main/shells/headless/calculator/registry.ts';

const script = new URL('../../main/shells/headless/calc.ts', import.meta.url).pathname;

function calc(words: readonly string[], input = '') {
  const { status, stdout, stderr } = spawnSync(process.execPath, [script, ...words], { input, encoding: 'utf8' });
  return { status, stdout, stderr };
}

describe('the console', () => {
  it('answers with one JSON object and leaves with 0', () => {
    const { status, stdout, stderr } = calc(['convert'], '{"value":"0.0355","from":"in","to":"mm"}');
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(JSON.parse(stdout)).toEqual({ value: '0.9017' });
  });

  it('lists every name, one a line', () => {
    const { status, stdout } = calc(['list']);
    expect(status).toBe(0);
    const promised =
      'convert summary student-t budget clearance feeler conformity acceptance-risk gauge-study variance-components ' +
      'agreement deming individuals-chart gap select-plates next-swaps end-play kaplan-meier log-rank weibull cox ' +
      'fisher false-discovery piston-force torque-capacity engagement fill-and-drag normal f-distribution chi-square ' +
      'pooled-repeatability feeler-bias';
    expect(stdout.trim().split('\n')).toEqual(expect.arrayContaining(promised.split(' ')));
  });

  it('explains inputs, units, outputs, formula and source', () => {
    const { status, stdout } = calc(['piston-force', '--explain']);
    expect(status).toBe(0);
    for (const said of [
      'pressure_Pa',
      'kg/m³',
      'netForce_N',
      'Formula',
      'Source',
      'spring_N, number: N, as installed',
    ]) {
      expect(stdout).toContain(said);
    }
    for (const computation of computations) {
      const text = explain(computation);
      for (const output of Object.keys(computation.outputs)) expect(text).toContain(`  ${output}: `);
      expect(text).not.toMatch(/undefined|anything|\[object/);
    }
  });

  it.each([
    ['an unknown name', ['clearence'], '{}', 'unknown-name'],
    ['no name', [], '', 'usage'],
    ['more after list', ['list', 'extra'], '', 'usage'],
    ['an option that is none', ['summary', '--verbose'], '{}', 'usage'],
    ['nothing on the input', ['summary'], '', 'not-json'],
    ['JSON that breaks off', ['summary'], '{"values":[1,2', 'not-json'],
    ['NaN', ['summary'], '{"values":[1,NaN]}', 'not-json'],
    ['a number too large for a double', ['summary'], '{"values":[1,1e999]}', 'input'],
    ['text for a number', ['summary'], '{"values":[1,"2"]}', 'input'],
    ['a list for an object', ['summary'], '[1,2]', 'input'],
    ['a field that is not asked for', ['summary'], '{"values":[1,2],"sigma":3}', 'input'],
    ['a field that is missing', ['conformity'], '{"value":1,"standardUncertainty":1,"lower":0}', 'input'],
    ['numbers that overflow', ['summary'], '{"values":[1e308,-1e308]}', 'out-of-range'],
  ])('refuses %s in one plain sentence and leaves with 2', (_, words, input, code) => {
    const { status, stdout, stderr } = calc(words, input);
    expect({ status, stderr }).toEqual({ status: 2, stderr: '' });
    expect(JSON.parse(stdout)).toEqual({ refusal: { code, message: expect.stringMatching(/^[^\n]+\.$/) } });
  });

  it('names the word after --explain that is too many', () => {
    const { status, stdout } = calc(['summary', '--explain', '--x']);
    expect(status).toBe(2);
    expect(JSON.parse(stdout).refusal.message).toBe('“--x” is not understood: nothing may follow --explain.');
  });

  it('100,000 builds go through', () => {
    const time = Array.from({ length: 100_000 }, (_, i) => 1 + ((i * 7919) % 100_003));
    const event = time.map((_, i) => (i % 3 === 0 ? 1 : 0));
    const { status, stdout } = calc(['cox'], JSON.stringify({ time, event, x: time.map((_, i) => (i * 31) % 97) }));
    expect(status).toBe(0);
    expect(Math.abs(JSON.parse(stdout).z)).toBeLessThan(5);
  });
});
