// test/bot/ask/task.test.ts: arguments of `ask`: what they mean, and one line on what is wrong with them.
import { expect, test } from 'vitest'
import { readTask } from '../../../bot/ask/task.ts'

test.each([
  [['RIR over BR'], { kind: 'message', text: 'RIR over BR', json: false }],
  [['RIR', 'over', 'BR'], { kind: 'message', text: 'RIR over BR', json: false }],
  [['--json', 'RIR over BR'], { kind: 'message', text: 'RIR over BR', json: true }],
  [['--picture', 'a.png', 'RIR'], { kind: 'message', text: 'RIR', json: false, picture: 'a.png' }],
  [[''], { kind: 'message', text: '', json: false }],
  [['--json', '--batch', 'in.jsonl'], { kind: 'batch', file: 'in.jsonl' }],
  [['--json', '--batch', '-'], { kind: 'batch', file: '-' }],
  [['--statement', 'flock.json'], { kind: 'statement', file: 'flock.json' }],
])('%j is understood', (argv, task) => {
  expect(readTask(argv)).toEqual({ ok: true, value: task })
})

test.each([
  [[], 'no message'],
  [['--jsno', 'RIR'], '--jsno'],
  [['--batch'], 'missing'],
  [['--batch', 'in.jsonl'], '--json --batch'],
  [['--json', '--batch', 'in.jsonl', 'RIR'], 'does not go with a file'],
  [['--json', '--batch', 'a', '--statement', 'b'], 'do not go together'],
  [['--statement', 'b', '--picture', 'c'], '--picture goes with one message'],
])('%j is refused in one line that names the fault', (argv, named) => {
  const task = readTask(argv)
  expect(task.ok).toBe(false)
  if (task.ok) return
  expect(task.fault).toContain(named)
  expect(task.fault).not.toContain('\n')
})
