// A computation in words: its inputs with their units, its outputs, its formula and where it comes from.
import { z } from 'zod';
import type { Computation } from './computation.ts';

/** The parts of a JSON schema that this writes down. */
type Shape = {
  readonly type?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly required?: readonly string[];
  readonly items?: Shape;
  readonly anyOf?: readonly Shape[];
  readonly oneOf?: readonly Shape[];
  readonly default?: unknown;
};

export function explain({ name, purpose, input, outputs, formula, source }: Computation): string {
  const shape = z.toJSONSchema(input, { io: 'input', unrepresentable: 'any' }) as Shape;
  const written = Object.entries(outputs).map(([output, what]) => `  ${output}: ${what}`);
  return [
    `${name}: ${purpose}`,
    '',
    'Input, one JSON object',
    ...fieldsOf(shape, '  '),
    '',
    'Output',
    ...written,
    '',
    'Formula',
    ...formula.split('\n').map((line) => `  ${line}`),
    '',
    'Source',
    ...source.split('\n').map((line) => `  ${line}`),
  ].join('\n');
}

function fieldsOf(shape: Shape, indent: string): string[] {
  const choices = shape.anyOf ?? shape.oneOf;
  if (choices) return choices.flatMap((choice, i) => [...(i > 0 ? [`${indent}or`] : []), ...fieldsOf(choice, indent)]);
  return Object.entries(shape.properties ?? {}).flatMap(([name, field]) => {
    const isOptional = !shape.required?.includes(name);
    const without = field.default === undefined ? '' : `, ${JSON.stringify(field.default)} if left out`;
    const said = field.description ? `: ${field.description}` : '';
    const line = `${indent}${name}${isOptional ? ' (optional)' : ''}, ${kindOf(field)}${without}${said}`;
    return [line, ...insideOf(field, `${indent}  `)];
  });
}

function insideOf(field: Shape, indent: string): string[] {
  if (field.items) return insideOf(field.items, indent);
  const choices = field.anyOf ?? field.oneOf;
  const hasFields = field.properties || choices?.some((choice) => choice.properties);
  return hasFields ? fieldsOf(field, indent) : [];
}

function kindOf(field: Shape): string {
  if (field.const !== undefined) return JSON.stringify(field.const);
  if (field.enum) return field.enum.map((each) => JSON.stringify(each)).join(' or ');
  const choices = field.anyOf ?? field.oneOf;
  if (choices) return [...new Set(choices.map(kindOf))].join(' or ');
  if (field.items) return `list of ${kindOf(field.items)}`;
  return (
    { string: 'text', object: 'object', integer: 'whole number', boolean: 'true or false' }[field.type ?? ''] ??
    field.type ??
    'anything'
  );
}
