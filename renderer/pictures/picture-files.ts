// Pictures as they come into the window: chosen, dropped or pasted files.
import { useEffect } from 'react';
import type { DropItem } from 'react-aria-components';

/** What a window offers to choose from. */
export const pictureKinds = ['image/jpeg', 'image/png', 'image/webp'];

export function pictureFiles(files: Iterable<File>): File[] {
  return [...files].filter((file) => file.type.startsWith('image/') || /\.(heic|heif)$/i.test(file.name));
}

export function droppedFiles(items: readonly DropItem[]): Promise<File[]> {
  return Promise.all(items.flatMap((item) => (item.kind === 'file' ? [item.getFile()] : [])));
}

/** Calls `take` with the files of whatever is pasted while the screen is open. */
export function usePastedFiles(take: (files: readonly File[]) => void): void {
  useEffect(() => {
    const paste = (event: ClipboardEvent) => {
      const files = [...(event.clipboardData?.files ?? [])];
      if (files.length === 0) return;
      event.preventDefault();
      take(files);
    };
    document.addEventListener('paste', paste);
    return () => document.removeEventListener('paste', paste);
  }, [take]);
}
