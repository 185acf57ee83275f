// One photo, asked for when it comes into view.
import { useEffect, useRef, useState } from 'react';
import type { Photo } from '../../../app/photos/photos.contract.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useFileAddress } from '../../rpc/printed-file.ts';
import { useRead } from '../../rpc/use-read.ts';
import styles from './Photos.module.css';

export function PhotoPicture({ photo, size }: { photo: Photo; size: 'full' | 'small' }) {
  const frame = useRef<HTMLSpanElement>(null);
  const isSeen = useSeen(frame);
  const read = useRead('photos.getPhoto', isSeen ? { photoId: photo.photoId, size } : null);
  const address = useFileAddress(read.data && { mediaType: 'image/jpeg', base64: read.data.jpegBase64 });
  return (
    <span ref={frame} className={size === 'full' ? styles.whole : styles.picture}>
      {address && <img src={address} alt={photo.caption || 'Photo without a caption'} />}
      <FailureSentence error={read.error} />
    </span>
  );
}

/** True from the first time that any of the element is in view. */
function useSeen(element: { readonly current: HTMLElement | null }): boolean {
  const [isSeen, setSeen] = useState(false);
  useEffect(() => {
    if (!element.current || isSeen) return;
    const watch = new IntersectionObserver((entries) => {
      if (entries.some((entry) => entry.isIntersecting)) setSeen(true);
    });
    watch.observe(element.current);
    return () => watch.disconnect();
  }, [element, isSeen]);
  return isSeen;
}
