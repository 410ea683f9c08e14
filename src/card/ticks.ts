/**
 * Round numbers along an axis. Linear: steps of 1, 2 or 5 times a power of ten. Log: decades, with 2
 * and 5 between when there are few. Values are in the unit that is printed, not SI. A domain of no
 * width is opened up, so that a flat line still has an axis.
 */
export type Domain = readonly [low: number, high: number]

/** 1, 2 or 5 times a power of ten, at least `rough`. */
function niceStep(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(rough))
  const lead = rough / power
  return (lead <= 1.0001 ? 1 : lead <= 2.0001 ? 2 : lead <= 5.0001 ? 5 : 10) * power
}

/** Opens a domain of no width, or of less than a float can divide. */
export function opened([low, high]: Domain): Domain {
  const size = Math.max(Math.abs(low), Math.abs(high))
  if (high - low > Math.max(size * 1e-9, 1e-12)) return [low, high]
  const half = size < 1e-12 ? 1 : size * 0.1
  return [low - half, high + half]
}

export interface Scale {
  readonly domain: Domain
  readonly ticks: readonly number[]
  /** Decimals that tell the ticks apart; undefined on a log axis. */
  readonly decimals: number | undefined
  /** 0 at the low end, 1 at the high end. */
  at(value: number): number
}

/** A linear axis whose ends are ticks. */
export function linearScale(domain: Domain, count: number): Scale {
  const [low, high] = opened(domain)
  const step = niceStep((high - low) / count)
  const first = Math.floor(low / step + 1e-9)
  const last = Math.ceil(high / step - 1e-9)
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9))
  const ticks = Array.from({ length: last - first + 1 }, (_, index) =>
    Number(((first + index) * step).toFixed(decimals)),
  )
  const from = first * step
  const width = (last - first) * step
  return { domain: [from, from + width], ticks, decimals, at: (value) => (value - from) / width }
}

/** A linear axis over just this domain, ticks within it (side views keep their proportion). */
export function fixedScale(domain: Domain, count: number): Scale {
  const [low, high] = opened(domain)
  const { ticks, decimals } = linearScale([low, high], count)
  return {
    domain: [low, high],
    ticks: ticks.filter((tick) => tick >= low && tick <= high),
    decimals,
    at: (value) => (value - low) / (high - low),
  }
}

/** A logarithmic axis; only positive values have a place on it. */
export function logScale(domain: Domain, count: number): Scale {
  const low = Math.log10(domain[0])
  const high = Math.log10(domain[1])
  const first = Math.floor(low + 1e-9)
  const last = Math.max(Math.ceil(high - 1e-9), first + 1)
  const decades = last - first
  const leads = decades <= count / 3 ? [1, 2, 5] : [1]
  const every = Math.max(1, Math.ceil(decades / (count + 1)))
  const ticks: number[] = []
  for (let power = first; power <= last; power += every) {
    for (const lead of leads) {
      if (power < last || lead === 1) ticks.push(Number(`${lead}e${power}`))
    }
  }
  return {
    domain: [10 ** first, 10 ** last],
    ticks,
    decimals: undefined,
    at: (value) => (Math.log10(value) - first) / decades,
  }
}
