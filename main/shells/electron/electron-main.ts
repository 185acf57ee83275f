// What the desktop runtime runs first.
import { shopFolder } from '../shop-folder.ts';
import { startDesktop } from './desktop.ts';

startDesktop(shopFolder());
