// Stock, from the contract to the services of its shelves.
import type { Handlers } from '../rpc/handler.ts';
import { listsHandlers } from './lists.handlers.ts';
import { partsHandlers } from './parts.handlers.ts';
import { platesHandlers } from './plates.handlers.ts';
import { tracingHandlers } from './tracing.handlers.ts';

export const stockHandlers: Handlers<'stock'> = {
  ...platesHandlers,
  ...partsHandlers,
  ...listsHandlers,
  ...tracingHandlers,
};
