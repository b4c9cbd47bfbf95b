// bot/ask/statement.ts: a flock statement as text in, its result as one line of JSON out.
import { answerStatement } from '../../core/statement.ts'

export function statementLine(text: string): string {
  try {
    return JSON.stringify(answerStatement(JSON.parse(text)))
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error
    return JSON.stringify({ error: `the file is not JSON: ${error.message}` })
  }
}
