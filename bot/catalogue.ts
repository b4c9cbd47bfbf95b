// bot/catalogue.ts: the command for those who look after the catalogue: npm run catalogue -- list | show | coverage | check.
import { perform } from './catalogue/perform.ts'

process.exitCode = await perform(process.argv.slice(2))
