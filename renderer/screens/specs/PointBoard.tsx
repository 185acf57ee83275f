// A picture on which points are placed: a click puts one there, a point is dragged or moved by the arrow keys.
import type { KeyboardEvent, PointerEvent } from 'react';
import { KeptPicture, type ShownSize } from '../../pictures/KeptPicture.tsx';
import styles from './Pictures.module.css';
import { movedBy, onPicture } from './picture-edits.ts';
import type { TypedPicture, TypedPoint } from './typed-pictures.ts';

type Place = { readonly x_permille: number; readonly y_permille: number };

type PointBoardProps = {
  picture: TypedPicture;
  onPlace: (place: Place) => void;
  onMove: (point: TypedPoint) => void;
  /** Enter on a point: it stands where it should. */
  onDone: (key: number) => void;
};

export function PointBoard({ picture, onPlace, onMove, onDone }: PointBoardProps) {
  return (
    <KeptPicture picture={picture}>
      {(shown) => (
        // The keyboard's way is the key below, “Add a point”.
        // biome-ignore lint/a11y/noStaticElementInteractions: see above
        // biome-ignore lint/a11y/useKeyWithClickEvents: see above
        <div
          className={styles.board}
          onClick={({ target, currentTarget, nativeEvent }) => {
            if (target === currentTarget) onPlace(placeAt(nativeEvent.offsetX, nativeEvent.offsetY, shown));
          }}
        >
          {picture.points.map((point) => (
            <PointKey key={point.key} point={point} shown={shown} onMove={onMove} onDone={onDone} />
          ))}
        </div>
      )}
    </KeptPicture>
  );
}

function placeAt(x: number, y: number, { width, height }: ShownSize): Place {
  return { x_permille: onPicture((1000 * x) / width), y_permille: onPicture((1000 * y) / height) };
}

const step_permille = 5;
const largeStep_permille = 50;
const arrows: Readonly<Record<string, readonly [across: number, down: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

type PointKeyProps = Pick<PointBoardProps, 'onMove' | 'onDone'> & { point: TypedPoint; shown: ShownSize };

function PointKey({ point, shown, onMove, onDone }: PointKeyProps) {
  const { label, x_permille, y_permille } = point;
  const press = (event: KeyboardEvent) => {
    const arrow = arrows[event.key];
    if (event.key === 'Enter') onDone(point.key);
    if (event.key === 'Enter' || arrow) event.preventDefault();
    if (!arrow) return;
    const step = event.shiftKey ? largeStep_permille : step_permille;
    onMove(movedBy(point, arrow[0] * step, arrow[1] * step));
  };
  const drag = ({ currentTarget, pointerId, clientX, clientY }: PointerEvent<HTMLButtonElement>) => {
    if (!currentTarget.hasPointerCapture(pointerId)) return;
    const board = currentTarget.parentElement?.getBoundingClientRect();
    if (board) onMove({ ...point, ...placeAt(clientX - board.left, clientY - board.top, shown) });
  };
  return (
    <button
      id={pointKeyId(point.key)}
      type="button"
      className={styles.pointKey}
      style={{ left: `${x_permille / 10}%`, top: `${y_permille / 10}%` }}
      aria-label={`Point ${label}, ${Math.round(x_permille / 10)} % from the left, ${Math.round(y_permille / 10)} % from the top`}
      onKeyDown={press}
      onPointerDown={({ currentTarget, pointerId }) => currentTarget.setPointerCapture(pointerId)}
      onPointerMove={drag}
    >
      {label || '?'}
    </button>
  );
}

export function pointKeyId(key: number): string {
  return `point-${key}`;
}
