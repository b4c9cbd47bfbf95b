// test/grammar/coverage.test.ts: each rule of the grammar is used by at least one message of the tables.
import nearley from 'nearley'
import { expect, test, vi } from 'vitest'
import keepers from '../data/keepers.json' with { type: 'json' }
import { tables } from './messages.ts'

const symbolName = (symbol: unknown): string =>
  typeof symbol === 'object' && symbol !== null && 'type' in symbol ? `%${String(symbol.type)}` : String(symbol)

const shown = ({ name, symbols }: nearley.ParserRule): string =>
  `${name} -> ${symbols.map(symbolName).join(' ') || 'null'}`

/** Words that are read so only where a flock is told by name. */
const byName = [
  'Bert is out of Daisy by Sid',
  'Bert is out of Sid x Daisy',
  'Bert is out of Sid and Daisy',
  'Bert, out of Sid + Daisy',
  'Bert is a son of Sid',
  'Bert is by Sid',
  'Bert by Sid',
  "Bert's dad is Sid",
  "Sid is Bert's dad",
  "Bert's mum is Daisy",
  'Daisy is a lavender Orpington hen',
  "Sid isn't lavender",
  'Sid carries lavender',
  "Sid doesn't carry lavender",
  'my RIR roo Rex',
  'my RIR roo is called Rex',
  'Sid, Bert is out of Daisy by Rex',
  'Bert is not a lavender Orpington',
  'Bert out of Daisy',
  'Bert is out of Sid + Daisy',
] as const

/** Ways of writing that no table of what was asked has. */
const seldom: readonly { readonly text: string; readonly before?: string }[] = [
  { text: 'my Sussex hens: a RIR or a Buckeye rooster' },
  { text: 'P/p+ by p+/p+' },
  { text: 'half RIR half BR hen with a Sussex roo' },
  { text: 'half RIR, half BR hen with a Sussex roo' },
  { text: 'half RIR, and half BR hen under a Sussex roo' },
  { text: 'half RIR/half BR hen under a Sussex roo' },
  { text: 'the roo is half RIR half BR' },
  { text: 's+/s+ and b+/b+ cock over S/- hens' },
  { text: 'RIR over BR, 3 chicks black' },
  { text: 'my hen is half Silkie and half Cochin, over her a RIR roo' },
  { text: 'RIR and Delaware together' },
  { text: 'RIR and Delaware mixed together' },
  { text: 'a cross between RIR and Delaware' },
  { text: 'cross of RIR and Delaware' },
  { text: 'RIR roo and over barred rock hens' },
  { text: 'RIR roo put over over BR hens' },
  { text: 'RIR roo on between BR hens' },
  { text: 'BR hens, under a Sussex roo' },
  { text: 'BR hens are under a Sussex roo' },
  { text: 'RIR over BR, and Sussex over BR' },
  { text: 'RIR over BR + Sussex over BR' },
  { text: 'pullet out of a Sussex hen by a RIR cock' },
  { text: 'cock with one dose of barring over RIR hens' },
  { text: 'RIR roo (split to silver) over BR hens' },
  { text: 'RIR roo (no bars) over BR hens' },
  { text: 'RIR roo (F1) over BR hens' },
  { text: 'RIR roo with bars over BR hens' },
  { text: 'the roo is not a Sussex', before: 'Sussex over RIR hens' },
  { text: 'swap the cock is a Delaware', before: 'Sussex over RIR hens' },
  { text: 'make him a Delaware', before: 'Sussex over RIR hens' },
  { text: 'change my roo to a Delaware', before: 'Sussex over RIR hens' },
  { text: 'which rooster over on my BR hens' },
  { text: '3 out of 7 white from a black cock over a split hen' },
  { text: '3 white of 7 from a black cock over a split hen' },
  { text: '7 carry lavender, black cock over lavender hen' },
  { text: 'silkie over RIR, 4 of 7 feathered legs' },
  { text: 'silkie over RIR, 3 chicks five toes' },
  { text: '3 silver grey and 4 black' },
  { text: 'RIR over sussex gave 3 gold pullets 4 silver cockerels' },
  { text: 'got 3 pullet chicks and 4 cockerel chicks from RIR cock over barred hens' },
  { text: 'RIR x BR cross hen' },
]

/** Notes each rule that is applied, and not turned down by its own postprocessor. */
function watched(made: nearley.ParserRule[]): Set<string> {
  const used = new Set<string>()
  for (const rule of made) {
    const own = rule.postprocess
    const key = shown(rule)
    rule.postprocess = (words, at, fail) => {
      const value: unknown = own ? own(words, at, fail) : words
      if (value !== fail) used.add(key)
      return value
    }
  }
  return used
}

test('each rule is used by a message of the tables', { timeout: 120_000 }, async () => {
  // The parser copies the rules as it loads, so all of it is loaded anew, the rules first.
  vi.resetModules()
  const { default: rules } = await import('../../grammar/message.js')
  const used = watched(rules.ParserRules)
  const { understand } = await import('../../grammar/understand.ts')
  const { messages } = await import('./answered.ts')
  const { emptyContext } = await import('../../grammar/context.ts')
  const rows: readonly { readonly text: string; readonly before?: string | undefined }[] = [
    ...tables.flatMap((table) => table.rows),
    ...keepers,
    ...messages(),
    ...byName.map((text) => ({ text })),
    ...seldom,
  ]
  for (const { text, before } of rows) {
    const context = before === undefined ? emptyContext() : understand(before, emptyContext()).context
    understand(text, context)
  }
  expect(rules.ParserRules.map(shown).filter((rule) => !used.has(rule))).toEqual([])
})
