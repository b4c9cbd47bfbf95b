// test/tools/pictures.ts: draws the sheet of twenty crosses and the charts into pictures/, each from a message as a keeper types it. Run: npm run pictures.
import { mkdirSync, writeFileSync } from 'node:fs'
import { Resvg } from '@resvg/resvg-js'
import { emptyContext } from '../../grammar/context.ts'
import { think } from '../../bot/think.ts'
import { planOf } from '../../bot/render/picture/plan.ts'
import type { Plan } from '../../bot/render/picture/card/frame.ts'
import { encode } from '../../bot/render/picture/png.ts'
import { rasterise } from '../../bot/render/picture/raster.ts'
import { blindSheet, contactSheet, type Named } from './pictureSheets.ts'
import type { Answer } from '../../core/answer.ts'

const folder = 'pictures'
const crosses = [
  'production Rhode Island Red cock over Light Sussex hens',
  'Rhode Island Red cock over Barred Rock hens',
  'New Hampshire roo over Delaware hens',
  'Light Sussex cock over Rhode Island Red hens',
  'Barred Rock cock over Rhode Island Red hens',
  'Black Australorp cock over Barred Rock hens',
  'Rhode Island Red cock over White Plymouth Rock hens',
  'Brown Leghorn cock over Light Sussex hens',
  'Cream Legbar cock with Cream Legbar hens',
  'Black Copper Marans cock over Cream Legbar hens',
  'Golden Laced Wyandotte cock over Silver Laced Wyandotte hens',
  'Black Silkie cock over Light Sussex hens',
  'Blue Australorp cock over Blue Australorp hens',
  'White Leghorn cock over Rhode Island Red hens',
  'Buff Orpington cock over Dark Brahma hens',
  'Gold Campine cock over Silver Campine hens',
  'Barred Rock cock with Barred Rock hens',
  'Splash Marans cock over Barred Rock hens',
  'Speckled Sussex cock over Light Sussex hens',
  'Salmon Faverolles cock over Barred Rock hens',
]
const charts = [
  'Bert is a black cock whose full brother is lavender. From a lavender hen he gave 2 black chicks. Is he split to lavender?',
  'Production or heritage Rhode Island Red, which lays more eggs over three years?',
  'I want 12 pullets, how many eggs should I set?',
]

const answerTo = (message: string): Answer => think(message, emptyContext()).answer

async function drawn(
  message: string,
  room: 'light' | 'dark' = 'light',
): Promise<{ readonly answer: Answer; readonly plan: Plan }> {
  const answer = answerTo(message)
  const plan = await planOf(answer, room)
  if (!plan) throw new Error(`no picture of: ${message} (${answer.kind})`)
  return { answer, plan }
}

const save = (name: string, png: Uint8Array): void => writeFileSync(`${folder}/${name}`, png)

/** A sheet holds all colours of its twenty cards, so it takes a fuller palette than one card. */
function saveSheet(name: string, markup: string): void {
  const image = new Resvg(markup, { font: { loadSystemFonts: false } }).render()
  save(name, encode({ width: image.width, height: image.height, rgba: image.pixels }, 200))
}

mkdirSync(folder, { recursive: true })
const cards: Named[] = []
for (const [at, message] of crosses.entries()) {
  const { answer, plan } = await drawn(message)
  const number = `${at + 1}`.padStart(2, '0')
  cards.push({ number, message, answer, plan })
  save(`${number}.png`, rasterise(plan.markup, plan.height).png)
}
saveSheet('sheet.png', contactSheet(cards))
saveSheet('blind.png', blindSheet(cards))

const night = await drawn(crosses[1]!, 'dark')
save('dark.png', rasterise(night.plan.markup, night.plan.height).png)
const plots: Named[] = []
for (const message of charts) {
  const { answer, plan } = await drawn(message)
  plots.push({ number: plan.fileName.replace('.png', ''), message, answer, plan })
  save(plan.fileName, rasterise(plan.markup, plan.height).png)
}

const entry = ({ number, message, plan }: Named): string =>
  `### ${number}. ${message}\n\n![${message}](${number}.png)\n\n${plan.caption.split('\n').join('  \n')}\n`
writeFileSync(
  `${folder}/README.md`,
  `# Pictures\n\nMade by \`npm run pictures\` from the messages below; nothing here is drawn by hand. [All on one sheet](sheet.png); [the chicks without words](blind.png), to see whether the pullets can be told; [in a dark room](dark.png).\n\n${[...cards, ...plots].map(entry).join('\n')}`,
)
