/** Property tests draw the same cases in every run, so that a run can be repeated; `FC_SEED` draws others. */
import { configureGlobal } from 'fast-check'

configureGlobal({ seed: Number(process.env.FC_SEED ?? 20_261_125) })
