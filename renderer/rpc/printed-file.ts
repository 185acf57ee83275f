// A file that main answered with: shown from an address of this window only, saved under its own name.
import { useEffect, useState } from 'react';

export type FileContents = { readonly mediaType: string; readonly base64: string };

/** A local address for the file while it is shown; null until there is one. */
export function useFileAddress(file: FileContents | undefined): string | null {
  const [address, setAddress] = useState<string | null>(null);
  const mediaType = file?.mediaType;
  const base64 = file?.base64;
  useEffect(() => {
    if (mediaType === undefined || base64 === undefined) return;
    const made = addressOf({ mediaType, base64 });
    setAddress(made);
    return () => {
      setAddress(null);
      URL.revokeObjectURL(made);
    };
  }, [mediaType, base64]);
  return address;
}

/** Hands the file to the browser's or the desktop's own way of saving. */
export function saveFile(file: FileContents & { readonly fileName: string }): void {
  const link = document.createElement('a');
  link.href = addressOf(file);
  link.download = file.fileName;
  link.click();
  // The download has begun by then; until it has, the address must hold.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

function addressOf({ mediaType, base64 }: FileContents): string {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  return URL.createObjectURL(new Blob([bytes], { type: mediaType }));
}
