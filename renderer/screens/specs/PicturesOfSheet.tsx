// The pictures of a sheet as a document: each with its points, and beside it what every point names.
import type { SavedPicture } from '../../../app/specs/specs.contract.ts';
import { swappedSides } from '../../../app/specs/swapped-sides.ts';
import { Notice } from '../../components/Notice.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { PointsOnPicture } from '../../pictures/PointsOnPicture.tsx';
import styles from './SheetScreen.module.css';

export function PicturesOfSheet({ pictures }: { pictures: readonly SavedPicture[] }) {
  if (pictures.length === 0) return null;
  return (
    <section aria-labelledby="pictures">
      <h2 id="pictures" className={styles.title}>
        Pictures
      </h2>
      {swappedSides(pictures).map((sentence) => (
        <Notice key={sentence}>{sentence}</Notice>
      ))}
      {pictures.map((picture) => (
        <div key={picture.pictureId} className={styles.picture}>
          <PointsOnPicture
            picture={picture}
            points={picture.points.map((point) => ({ ...point, figure: '', mark: { kind: 'none' } }))}
          />
          <div>
            <h3 className={styles.pictureTitle}>{picture.title}</h3>
            <Table label={picture.title} density="dense">
              <thead>
                <tr>
                  <ColumnHead>point</ColumnHead>
                  <ColumnHead>names</ColumnHead>
                </tr>
              </thead>
              <tbody>
                {picture.points.map((point) => (
                  <tr key={point.label}>
                    <RowHead>{point.label}</RowHead>
                    <Cell>
                      {[point.checkName ?? point.lineWords ?? '', point.note].filter((each) => each !== '').join(', ')}
                    </Cell>
                  </tr>
                ))}
              </tbody>
            </Table>
          </div>
        </div>
      ))}
    </section>
  );
}
