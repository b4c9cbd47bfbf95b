// test/tools/readme.ts: asks the README's questions again and writes the answers into it. Run: npm run readme.
import { readFileSync, writeFileSync } from 'node:fs'
import { questionsIn, rerun, withBlock } from './conversation.ts'

const readme = readFileSync('README.md', 'utf8')
writeFileSync('README.md', withBlock(readme, rerun(questionsIn(readme))))
