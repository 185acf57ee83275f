// A paper as a web page with the same words, tables and charts, for Chromium to print: what the painter is compared with.
// Hatches are left out, to Chromium's advantage.
import { pathToFileURL } from 'node:url';
import type { Chart, Shape } from '../../app/charts/shapes.ts';
import { textSizes } from '../../app/charts/shapes.ts';
import { type Block, type Cell, type Paper, textLines, type Words } from '../../app/papers/paper.ts';
import { findFonts } from '../../main/papers/fonts.ts';

const escaped = (text: string) =>
  text.replace(/[&<>"]/g, (letter) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[letter] ?? letter);

export function paperAsHtml(paper: Paper): string {
  const { regular, semibold, mono } = findFonts();
  const face = (name: string, weight: number, file: unknown) =>
    `@font-face{font-family:"${name}";font-weight:${weight};src:url("${pathToFileURL(String(file)).href}")}`;
  const style = `${face('S', 400, regular)}${face('S', 600, semibold)}${face('M', 400, mono)}
    body{font:${textLines.body.size}pt/${textLines.body.line}pt S;font-feature-settings:"tnum","lnum";margin:0}
    h1{font:600 ${textLines.read.size}pt S}h2{font:600 ${textLines.say.size}pt S}
    small{font-size:${textLines.small.size}pt}table{border-collapse:collapse;width:100%}
    td,th{border-bottom:.5pt solid #999;text-align:left}svg{display:inline-block}`;
  return `<!doctype html><html lang="${paper.language}"><head><meta charset="utf-8"><title>${escaped(paper.title)}</title>
    <style>${style}</style></head><body>${paper.blocks.map(blockAsHtml).join('')}</body></html>`;
}

function blockAsHtml(block: Block): string {
  switch (block.kind) {
    case 'masthead':
      return `<h1>${escaped(block.title)}</h1><p>${words(block.by)}</p>${block.right.map((line) => `<p>${words(line)}</p>`).join('')}`;
    case 'facts':
      return block.facts.map(({ name, value }) => `<p><small>${escaped(name)}</small> ${escaped(value)}</p>`).join('');
    case 'verdict':
      return `<h2>${escaped(block.sentence)}</h2><small>${escaped(block.aside)}</small>`;
    case 'heading':
      return `<h2>${escaped(block.text)}</h2>`;
    case 'paragraph':
      return `<p>${words(block.words)}</p>`;
    case 'list':
      return `<ul>${block.items.map((item) => `<li>${escaped(item)}</li>`).join('')}</ul>`;
    case 'table':
      return `<table><thead><tr>${block.columns
        .map(({ heading }) => `<th>${typeof heading === 'string' ? escaped(heading) : svg(heading)}</th>`)
        .join('')}</tr></thead>${block.rows
        .map((row) =>
          row.kind === 'group'
            ? `<tr><th colspan="${block.columns.length}">${escaped(row.text)}</th></tr>`
            : `<tr>${row.cells.map((cell) => `<td>${cellAsHtml(cell)}</td>`).join('')}</tr>${row.note ? `<tr><td colspan="${block.columns.length}"><small>${escaped(row.note)}</small></td></tr>` : ''}`,
        )
        .join('')}</table>`;
    case 'chart':
      return svg(block.chart);
    case 'charts':
      return block.charts.map(svg).join('');
    case 'together':
      return `<div style="break-inside:avoid">${block.left ? svg(block.left.chart) : ''}${block.blocks.map(blockAsHtml).join('')}</div>`;
    case 'closing':
      return `${(block.versions[0] ?? []).map(svg).join('')}${block.notes.map((note) => `<p><small>${words(note)}</small></p>`).join('')}${block.signatures.map((line) => `<p>${escaped(line)}</p>`).join('')}`;
    case 'pictures':
    case 'marked pictures':
      throw new Error('the paper that is compared has no photos');
  }
}

const words = (all: readonly Words[]) =>
  all.map(({ text, strong }) => (strong ? `<b>${escaped(text)}</b>` : escaped(text))).join('');

function cellAsHtml(cell: Cell): string {
  if (cell.kind === 'chart') return svg(cell.chart);
  return cell.kind === 'verdict' ? escaped(cell.text) : words(cell.words);
}

function svg({ width, height, title, shapes, medium }: Chart): string {
  return `<svg width="${width}pt" height="${height}pt" viewBox="0 0 ${width} ${height}" role="img" aria-label="${escaped(title)}">${shapes
    .map((shape) => shapeAsSvg(shape, textSizes[medium]))
    .join('')}</svg>`;
}

function shapeAsSvg(shape: Shape, sizes: Record<string, number>): string {
  if (shape.kind === 'text') {
    const anchor = shape.anchor ?? 'start';
    return `<text x="${shape.x}" y="${shape.y}" font-size="${sizes[shape.size]}" text-anchor="${anchor}">${escaped(shape.text)}</text>`;
  }
  const paint = `fill="${shape.fill === undefined ? 'none' : '#fff'}" ${shape.stroke === undefined ? '' : `stroke="#000" stroke-width="${shape.strokeWidth ?? 1}"`}`;
  switch (shape.kind) {
    case 'line':
      return `<line x1="${shape.x1}" y1="${shape.y1}" x2="${shape.x2}" y2="${shape.y2}" ${paint}/>`;
    case 'path':
      return `<path d="${shape.outline}" ${paint}/>`;
    case 'rect':
      return `<rect x="${shape.x}" y="${shape.y}" width="${shape.width}" height="${shape.height}" ${paint}/>`;
    case 'circle':
      return `<circle cx="${shape.x}" cy="${shape.y}" r="${shape.radius}" ${paint}/>`;
  }
}
