/**
 * Blade fuses: the ratings they come in and how soon or late they open (ISO 8820-3, recalled).
 *
 * In: a style, currents in A, a current as a multiple of the rating. Out: ratings in A and times in s.
 * A start surge is held against the *shortest* time a fuse may take, a fault against the longest:
 * two fuses of one rating may differ a thousandfold at 135 %.
 */
import * as elementary from './elementary.ts'
import { logLog } from './log-log.ts'
import { bladeRatings } from './tables/blade-fuse-ratings.ts'
import { bladeTimeRows } from './tables/blade-fuse-times.ts'

export { bladeRatings }
export type BladeStyle = keyof typeof bladeRatings

export const bladeSource = {
  title:
    'ISO 8820-3, road vehicles, fuse-links with tabs (blade type): ratings and operating times',
  trust: 'recalled',
} as const

const [carried, ...opening] = bladeTimeRows
/** Carried for 100 h and more. */
const carriedMultiple = carried[0] / 100

type Times = readonly (readonly [multiple: number, seconds: number])[]
/** Every style opens no sooner than this; the maxi is slower. */
const shortest: Times = /* @__PURE__ */ opening.map(([percent, time]) => [percent / 100, time])
const [listedFrom, listedTime] = shortest[0] ?? [carriedMultiple, Infinity]
const listed = (column: 2 | 3 | 4): Times =>
  opening.flatMap((row) => {
    const time = row[column]
    return time === null ? [] : [[row[0] / 100, time] as const]
  })
const longest: Readonly<Record<BladeStyle, Times>> = {
  mini: /* @__PURE__ */ listed(2),
  medium: /* @__PURE__ */ listed(3),
  maxi: /* @__PURE__ */ listed(4),
}

/**
 * The soonest a blade fuse may open, s. Infinity up to 110 %, log-log between the listed points, 0
 * beyond 600 %. Between 110 and 135 % nothing is listed; taken is one heated element that never
 * opens at 110 % and just meets the time at 135 %, the quickest that keeps both (model).
 */
export function shortestOpening(multiple: number): number {
  if (multiple < listedFrom) {
    // Infinity where the multiple is carried for ever.
    const warming = (m: number) => -elementary.log1p(-Math.min((carriedMultiple / m) ** 2, 1))
    return (listedTime * warming(multiple)) / warming(listedFrom)
  }
  return logLog(shortest, multiple) ?? 0
}

/** The latest it may open, s; undefined below 135 %, where it need never open, and beyond 600 %. */
export function longestOpening(style: BladeStyle, multiple: number): number | undefined {
  return logLog(longest[style], multiple)
}

/** Ratings from `least` up to `most`, A; a rating equal to either counts. */
export function ratingsBetween(style: BladeStyle, least: number, most: number): readonly number[] {
  const slack = 1e-9
  return bladeRatings[style].filter(
    (rating) => rating >= least * (1 - slack) && rating <= most * (1 + slack),
  )
}
