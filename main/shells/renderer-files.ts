// The built renderer as both shells hand it out: files of one folder only, under one strict policy.
import { realpathSync, statSync } from 'node:fs';
import { extname, join, sep } from 'node:path';

export const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  'frame-src blob:',
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

const contentTypes: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.ttf': 'font/ttf',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
};

/** The file that a path asks for, or undefined when it is not one of the renderer's. */
export function rendererFile(folder: string, pathname: string): { path: string; contentType: string } | undefined {
  let wanted: string;
  try {
    wanted = decodeURIComponent(pathname);
  } catch {
    return undefined;
  }
  if (/[\\\0]/.test(wanted)) return undefined;
  const path = existingPath(join(folder, wanted === '/' ? 'index.html' : wanted));
  const ours = existingPath(folder);
  if (path === undefined || ours === undefined || !path.startsWith(ours + sep)) return undefined;
  const contentType = contentTypes[extname(path)];
  if (!contentType || !statSync(path).isFile()) return undefined;
  return { path, contentType };
}

/** Where a path leads once its links are followed, or undefined when there is nothing. */
function existingPath(path: string): string | undefined {
  try {
    return realpathSync(path);
  } catch {
    return undefined;
  }
}
