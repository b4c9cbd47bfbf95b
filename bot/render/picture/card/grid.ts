// bot/render/picture/card/grid.ts: several drawings with their words in rows.
import { placed, svg } from '../svg.ts'
import type { Cell, Panel } from './cells.ts'

const between = 6

/** Cells in rows of at most `perRow`, as even as may be, each row in the middle. */
export function grid(
  cells: readonly Cell[],
  { width, size, perRow }: { readonly width: number; readonly size: number; readonly perRow: number },
): Panel {
  const columns = Math.min(perRow, Math.max(1, cells.length))
  const cellWidth = (width - (columns - 1) * between) / columns
  const rows = Array.from({ length: Math.ceil(cells.length / columns) }, (_, row) =>
    cells.slice(row * columns, (row + 1) * columns).map((cell) => cell(cellWidth, Math.min(size, cellWidth))),
  )
  let y = 0
  const drawn = rows.map((row) => {
    const free = ((columns - row.length) * (cellWidth + between)) / 2
    const line = row.map((one, at) => placed(one.drawn, free + at * (cellWidth + between), y))
    y += Math.max(...row.map(({ height }) => height)) + 4
    return line
  })
  return { height: Math.max(0, y - 4), drawn: svg`${drawn}` }
}
