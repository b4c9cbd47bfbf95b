// test/bot/picture/looks.ts: looks, answers and pixels for the tests of pictures.
import { Resvg } from '@resvg/resvg-js'
import type { Case, LookShare } from '../../../core/answer.ts'
import { Look } from '../../../core/looks/look.ts'
import { svg, type Markup } from '../../../bot/render/picture/svg.ts'
import { look as sample, lookShare } from '../render/samples.ts'

type Parts = {
  readonly chick?: Partial<Look['chick']>
  readonly plumage?: Partial<Look['plumage']>
  readonly form?: Partial<Look['form']>
  readonly shank?: string
  readonly skin?: Look['skin']
}

/** A look that passes the schema: a plain black bird but for what is said. */
export function look({ chick = {}, plumage = {}, form = {}, shank = 'slate', skin = 'white' }: Parts = {}): Look {
  const plain = sample(chick, 'black')
  return Look.parse({
    ...plain,
    plumage: { ...plain.plumage, ...plumage },
    form: { ...plain.form, ...form },
    shank,
    skin,
  })
}

/** A share of one sex with this look. */
export function shareOf(share: number, parts: Parts, words: Partial<LookShare> = {}): LookShare {
  const whole = look(parts)
  const spot = {
    none: 'none',
    small: 'small pale spot',
    large: 'large pale spot',
    blurred: 'blurred pale patch',
    hidden: 'none',
  }
  return {
    ...lookShare(share, {}, 'black'),
    down: whole.chick.words,
    headSpot: spot[whole.chick.headSpot],
    look: whole,
    ...words,
  }
}

export const withLooks = (one: Case, cockerels: readonly LookShare[], pullets: readonly LookShare[]): Case => ({
  ...one,
  cockerels,
  pullets,
})

/** A reader of colours at points of a drawing, in its own units. */
export function colours(drawing: Markup, size: number, ground = '#ff00ff'): (x: number, y: number) => string {
  const zoom = 4
  const { markup } =
    svg`<svg xmlns="http://www.w3.org/2000/svg" width="${size}" height="${size}"><rect width="${size}" height="${size}" fill="${ground}"/>${drawing}</svg>`
  const drawn = new Resvg(markup, { font: { loadSystemFonts: false }, fitTo: { mode: 'zoom', value: zoom } }).render()
  const { pixels, width } = drawn
  return (x, y) => {
    const at = (Math.round(y * zoom) * width + Math.round(x * zoom)) * 4
    return `#${pixels.subarray(at, at + 3).toString('hex')}`
  }
}

type Box = { readonly x: readonly [number, number]; readonly y: readonly [number, number] }

/** The colours of a box by how much of it they fill, at least a twentieth. */
export function shares(read: (x: number, y: number) => string, box: Box): readonly (readonly [string, number])[] {
  const counts = new Map<string, number>()
  let all = 0
  for (let x = box.x[0]; x < box.x[1]; x += 0.5)
    for (let y = box.y[0]; y < box.y[1]; y += 0.5) {
      const colour = read(x, y)
      counts.set(colour, (counts.get(colour) ?? 0) + 1)
      all += 1
    }
  return [...counts]
    .map(([colour, count]): [string, number] => [colour, count / all])
    .filter(([, share]) => share >= 0.05)
    .toSorted((a, b) => b[1] - a[1])
}
