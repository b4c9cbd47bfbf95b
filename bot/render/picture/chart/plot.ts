// bot/render/picture/chart/plot.ts: a chart as a block of the card: the plotting library with our font, palette and measures.
import { parse, View, type Config, type Spec } from 'vega'
import { rooms, type Room } from '../palette.ts'
import { svg } from '../svg.ts'
import { innerWidth, margin, type Block } from '../card/frame.ts'

/** What a chart needs to be told; width, font and colours of its frame are the same for all. */
export type Chart = { readonly height: number } & Pick<Spec, 'data' | 'scales' | 'axes' | 'marks'>

export async function plot(chart: Chart, room: Room): Promise<Block> {
  const spec: Spec = {
    ...chart,
    width: innerWidth,
    height: chart.height + 16,
    padding: 8,
    autosize: { type: 'fit', contains: 'padding' },
    config: config(room),
  }
  const view = new View(parse(spec), { renderer: 'none' })
  const drawn = await view.toSVG()
  view.finalize()
  const inner = drawn.replace(/^<svg[^>]*>/, '').replace(/<\/svg>$/, '')
  return {
    height: chart.height + 16,
    at: (
      y,
    ) => svg`<rect x="${margin}" y="${y}" width="${innerWidth}" height="${chart.height + 16}" rx="10" fill="${rooms[room].yard}"/>
      <g transform="translate(${margin} ${y})">${{ markup: inner }}</g>`,
  }
}

function config(room: Room): Config {
  const { onStage, line } = rooms[room]
  const font = 'DejaVu Sans'
  return {
    axis: {
      labelFont: font,
      titleFont: font,
      labelFontSize: 11.5,
      labelOverlap: 'parity',
      titleFontSize: 12,
      titleFontWeight: 'normal',
      labelColor: onStage,
      titleColor: onStage,
      domainColor: onStage,
      tickColor: onStage,
      gridColor: line,
      titlePadding: 5,
    },
    text: { font, fontSize: 12, fill: onStage },
  }
}
