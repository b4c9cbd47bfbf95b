// test/tools/conversation.ts: the conversation that stands in the README: its questions, and what the bot says to them now.
import { converse } from '../../bot/conversation.ts'
import type { Memory } from '../../bot/memory.ts'
import type { Said } from '../../bot/transport.ts'

const [start, end] = ['<!-- conversation -->', '<!-- /conversation -->']
const settings = { prefix: '', listens: false }
const cues = { direct: true, mentioned: false, repliesTo: 'nobody', inOurThread: false } as const
/** A fixed day, so that dates in answers stay. */
const noon = Date.UTC(2027, 2, 1, 12)

const said = (text: string, n: number): Said => ({
  kind: 'said',
  room: 'marlpit',
  person: 'keeper',
  id: `${n}`,
  text,
  sentAt: noon + n * 60_000,
  cues,
})

/** The part of the README between the marks, without them. */
export const block = (readme: string): string => readme.slice(readme.indexOf(start) + start.length, readme.indexOf(end))

/** Lines that begin with '>' are what a keeper typed. */
export const questionsIn = (readme: string): readonly string[] =>
  block(readme)
    .split('\n')
    .filter((line) => line.startsWith('> '))
    .map((line) => line.slice(2))

/** The block as it ought to stand: every question with the answer of now, asked one after the other by one keeper. */
export function rerun(questions: readonly string[]): string {
  let memory: Memory | undefined
  const parts: string[] = []
  for (const [n, question] of questions.entries()) {
    const turned = converse(memory, said(question, n), settings)
    memory = turned.memory
    const texts = turned.out.flatMap((one) => ('reply' in one ? [one.reply.text] : []))
    parts.push(`> ${question}\n\n${texts.join('\n')}\n`)
  }
  return `\n\`\`\`text\n${parts.join('\n')}\`\`\`\n`
}

export const withBlock = (readme: string, conversation: string): string =>
  readme.slice(0, readme.indexOf(start) + start.length) + conversation + readme.slice(readme.indexOf(end))
