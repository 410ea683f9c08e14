import { resolve } from 'node:path'
import { siteConfig } from './src/site/config.ts'

export default await siteConfig({ content: resolve(process.env.WORKED_NOTES_CONTENT ?? 'content') })
