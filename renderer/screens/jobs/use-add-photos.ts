// Taking photos in, one after the other: each is made small in the window and kept before the next begins.
import { useState } from 'react';
import { useAtBench } from '../../frame/at-bench.ts';
import { pictureFiles } from '../../pictures/picture-files.ts';
import { shrinkPhoto } from '../../pictures/shrink-photo.ts';
import { call } from '../../rpc/client.ts';
import { useWrite } from '../../rpc/use-write.ts';

export type PhotoSource = {
  readonly name: string;
  readonly folderName: string | null;
  readonly open: () => Promise<Blob>;
};

/** `onKept` hears of each one. `done` of `all` while it runs; a picture that cannot be taken in is named and the others go on. */
export function useAddPhotos(jobId: number, onKept?: (photoId: number) => void) {
  const { person } = useAtBench();
  const write = useWrite('photos.addPhoto');
  const [progress, setProgress] = useState<{ done: number; all: number } | null>(null);
  const [troubles, setTroubles] = useState<readonly string[]>([]);
  const add = async (sources: readonly PhotoSource[]) => {
    if (sources.length === 0 || progress !== null) return;
    setTroubles([]);
    const failed: string[] = [];
    for (const [done, source] of sources.entries()) {
      setProgress({ done, all: sources.length });
      try {
        const ready = await shrinkPhoto(await source.open(), source.name);
        const of = { jobId, caption: '', folderName: source.folderName, by: person.personId };
        const { photoId } = await write.mutateAsync({ ...of, ...ready });
        onKept?.(photoId);
      } catch (thrown) {
        failed.push(thrown instanceof Error ? thrown.message : String(thrown));
      }
    }
    setTroubles(failed);
    setProgress(null);
  };
  return { add, progress, troubles };
}

export function sourcesOf(files: Iterable<File>): PhotoSource[] {
  return pictureFiles(files).map((file) => ({ name: file.name, folderName: null, open: async () => file }));
}

/** Sources for files of the phone's folder. */
export function sourceInFolder(file: { name: string; folderName: string }): PhotoSource {
  return {
    name: file.name,
    folderName: file.folderName,
    open: async () => {
      const { base64 } = await call('photos.readFromFolder', { name: file.name });
      return new Blob([Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))]);
    },
  };
}
