// Imported before anything that builds a schema: the content security policy forbids code made from text, which zod
// would otherwise try.
import { z } from 'zod';

z.config({ jitless: true });
