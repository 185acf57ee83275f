// A picture of a spec sheet as wide as its room, with what is drawn over it; where its file is gone, why, in its place.
import { type CSSProperties, type ReactNode, useLayoutEffect, useRef, useState } from 'react';
import type { Picture } from '../../app/specs/spec-sheet.ts';
import { FailureSentence } from '../frame/FailureSentence.tsx';
import { useFileAddress } from '../rpc/printed-file.ts';
import { useRead } from '../rpc/use-read.ts';
import styles from './KeptPicture.module.css';

export type ShownSize = { readonly width: number; readonly height: number };

type KeptPictureProps = {
  picture: Pick<Picture, 'title' | 'sha256' | 'width' | 'height'>;
  /** Draws over the picture as it is shown, in pixels. */
  children: (shown: ShownSize) => ReactNode;
};

export function KeptPicture({ picture, children }: KeptPictureProps) {
  const { title, sha256, width, height } = picture;
  const read = useRead('specs.getPicture', { sha256 });
  const address = useFileAddress(read.data && { mediaType: 'image/jpeg', base64: read.data.jpegBase64 });
  const frame = useRef<HTMLDivElement>(null);
  const [shown, setShown] = useState<ShownSize | null>(null);
  useLayoutEffect(() => {
    const element = frame.current;
    if (!element) return;
    const measure = () => setShown({ width: element.clientWidth, height: element.clientHeight });
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return (
    <div ref={frame} className={styles.frame} style={{ '--shape': `${width} / ${height}` } as CSSProperties}>
      {address && <img className={styles.image} src={address} alt={title} draggable={false} />}
      {read.error && (
        <div className={styles.gone}>
          <FailureSentence error={read.error} />
        </div>
      )}
      {shown && children(shown)}
    </div>
  );
}
