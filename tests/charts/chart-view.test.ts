import { readFileSync } from 'node:fs';
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { lengthWords } from '../../app/charts/amounts.ts';
import { hatches, paintRoles } from '../../app/charts/shapes.ts';
import { stackUp } from '../../app/charts/stack-up.ts';
import { ChartView } from '../../renderer/charts/ChartView.tsx';
import { VerdictMark } from '../../renderer/charts/VerdictMark.tsx';
import { forwardPlanned, thou } from './example-unit.ts';

const chart = stackUp(
  { pieces: forwardPlanned, clearance_nm: thou(25.5) },
  { name: 'Forward', width: 272, height: 480, medium: 'screen', write: lengthWords('thou').full },
);

describe('a chart on the screen', () => {
  const two = renderToStaticMarkup(
    createElement('div', null, createElement(ChartView, { chart }), createElement(ChartView, { chart })),
  );

  test('is one picture with its sentence', () => {
    expect(two).toContain('role="img"');
    expect(two).toContain(`aria-label="${chart.title}"`);
  });

  test('defines its hatches for itself, under names no other chart has', () => {
    const defined = [...two.matchAll(/<pattern id="([^"]+)"/g)].map((match) => match[1]);
    expect(defined).toHaveLength(6);
    expect(new Set(defined).size).toBe(6);
    const asked = [...two.matchAll(/url\(#([^)]+)\)/g)].map((match) => match[1]);
    expect(new Set(asked)).toEqual(new Set(defined));
  });

  test('paints with classes only, which a strict content policy lets through', () => {
    expect(two).not.toContain('style=');
  });

  test('writes every figure', () => {
    for (const figure of ['77.0', '83.0', '250.0', '25.5']) expect(two).toContain(`>${figure}</text>`);
  });

  test('has a rule for every role it may be asked to paint', () => {
    const css = readFileSync('renderer/charts/ChartView.module.css', 'utf8');
    const tokens = readFileSync('renderer/frame/tokens.css', 'utf8');
    for (const role of paintRoles) {
      const used = new RegExp(`\\.fill-${role} \\{\\s*fill: var\\((--[a-z0-9-]+)\\)`).exec(css)?.[1];
      expect(used, role).toBeDefined();
      expect(css).toContain(`.stroke-${role} {`);
      expect(tokens).toContain(`${used}:`);
    }
    for (const hatch of Object.values(hatches)) expect(paintRoles).toContain(hatch.role);
  });
});

test('a verdict mark is silent: its word stands beside it', () => {
  const mark = renderToStaticMarkup(createElement(VerdictMark, { verdict: 'in' }));
  expect(mark).toContain('aria-hidden="true"');
  expect(mark).not.toContain('aria-label');
});
