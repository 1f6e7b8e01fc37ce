import type { Picture } from '@chargewright/picture'
import { t } from '../words/t.ts'

/** A picture with its title, and its figures as a table for those who do not see it. */
export function PictureFigure({ picture: { svg, title, table } }: { readonly picture: Picture }) {
  const { head, rows } = table
  return (
    <figure class="picture">
      <figcaption>
        <h3>{title}</h3>
      </figcaption>
      {/* The package writes the element itself and escapes every word in it. */}
      <div class="picture-drawing" dangerouslySetInnerHTML={{ __html: svg }} />
      <details class="fold">
        <summary>{t('The same in figures')}</summary>
        <FigureTable head={head} rows={rows} />
      </details>
    </figure>
  )
}

/** The figures behind a drawing. */
export function FigureTable({ head, rows }: Picture['table']) {
  return (
    <div class="picture-table">
      <table>
        <thead>
          <tr>
            {head.map((cell) => (
              <th key={cell} scope="col">
                {cell}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, i) => (
            <tr key={i}>
              {row.map((cell, column) => (
                <td key={head[column]}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
