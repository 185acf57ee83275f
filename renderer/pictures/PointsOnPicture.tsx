// A picture with its points, each with its figure and its mark. Only for the eye and the finger: a list beside it says
// the same to the keyboard and the screen reader.
import { Fragment } from 'react';
import { type MarkedPoint, picturePoints } from '../../app/charts/picture-points.ts';
import type { Picture } from '../../app/specs/spec-sheet.ts';
import { ChartView } from '../charts/ChartView.tsx';
import { KeptPicture } from './KeptPicture.tsx';
import styles from './PointsOnPicture.module.css';

type PointsOnPictureProps = {
  picture: Picture;
  points: readonly MarkedPoint[];
  /** The place of the point that the list beside is at. */
  chosen?: number | null;
  /** What a tap on a point does, or null where it does nothing. */
  onTap?: (index: number) => (() => void) | null;
};

export function PointsOnPicture({ picture, points, chosen = null, onTap }: PointsOnPictureProps) {
  return (
    <KeptPicture picture={picture}>
      {({ width, height }) => {
        const { chart, tags } = picturePoints(points, { width, height, medium: 'screen' }, '');
        return (
          <div className={styles.over} aria-hidden="true">
            <ChartView chart={chart} />
            {tags.map((tag, index) => {
              const tap = onTap?.(index) ?? null;
              const place = { left: tag.left, top: tag.top, width: tag.right - tag.left, height: tag.bottom - tag.top };
              const { label } = points[index]!;
              return (
                <Fragment key={label}>
                  {index === chosen && <span className={styles.chosen} style={place} />}
                  {tap && (
                    <button
                      type="button"
                      tabIndex={-1}
                      className={styles.tap}
                      style={place}
                      // The focus stays with the list.
                      onPointerDown={(event) => event.preventDefault()}
                      onClick={tap}
                    />
                  )}
                </Fragment>
              );
            })}
          </div>
        );
      }}
    </KeptPicture>
  );
}
