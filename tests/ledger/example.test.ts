/** The language as its own description shows it: one note, and the one it imports from. */
import { expect, it } from 'vitest'
import { calculators } from '../../calculators/index.ts'
import { blockOf, numberOf, soundLedger } from './ledger-of.ts'

const site = `title: Notes of a test
vehicle: an invented van
instruments:
  clampMeter: { title: clamp meter for direct current }
sources:
  controllerSheet: { title: Controller sheet, edition: rev B, read: 2026-01-05 }
`

const hill = `---
title: Up the slow hill
date: 2026-02-01
phase: target
status: done
---
The controller turns <Assumed id="hillHeat" value="900 W" because="5 % of the power on the hill" settle="read the inlet and outlet" /> into heat.
`

const cool = `---
title: Keeping the controller cool
date: 2026-03-14
phase: cooling
status: done            # planned | doing | done | redone | abandoned
---
import { hillHeat } from './hill-climb.mdx'

The sheet allows <Rated id="inletLimit" value="65 °C" source="controllerSheet" at="p. 7" /> at the inlet.
With the loop full the pump drew <Reading id="pumpDraw" value="1.5 A" plusMinus="0.1 A" with="clampMeter" at="14.0 V, warm" />.
The hose runs <Chosen id="supply" value="2.4 m" because="round the battery box" /> out and <Chosen id="back" value="2.8 m" because="over the rail" /> back, {supply + back} in all.

<Calc id="pumpFuse" use="motor-circuit" running={pumpDraw} starting="2.6 A" wire="1.0 mm²" />

The <Nominal>10 A</Nominal> fuse comes out and a {pumpFuse.fuse} goes in.
`

it('the example works out whole', async () => {
  const ledger = await soundLedger({ 'hill-climb': hill, cooling: cool }, calculators, site)
  const facts = (id: string) => {
    const { kind, firmness, value, shown, rests } = numberOf(ledger, id)
    return { id, kind, firmness, value, shown, rests }
  }
  expect(facts('cooling/supply + back')).toEqual({
    id: 'cooling/supply + back',
    kind: 'worked',
    firmness: 'chosen',
    value: 2.4 + 2.8,
    shown: '5.2\u00a0m',
    rests: ['cooling/back', 'cooling/supply'],
  })
  expect(facts('cooling/pumpDraw')).toEqual({
    id: 'cooling/pumpDraw',
    kind: 'reading',
    firmness: 'reading',
    value: 1.5,
    shown: '1.5\u00a0A',
    rests: [],
  })
  expect(facts('cooling/inletLimit').value).toBeCloseTo(338.15, 10)
  // 1.5 A / 0.8 = 1.875 A; of the sizes 2, 3, 4, 5, 7.5 A the first that the start of 2.6 A leaves
  // alone is 3 A (a 2 A fuse may open at 1.3 times its rating); 1.0 mm² carries 8.75 A.
  expect(facts('cooling/pumpFuse.fuse')).toMatchObject({
    kind: 'worked',
    firmness: 'assumed',
    value: 3,
    shown: '3\u00a0A',
  })
  const { given, verdict } = blockOf(ledger, 'cooling/pumpFuse')
  expect(verdict).toBe('unknown')
  expect(given).toMatchObject({
    running: { type: 'number', id: 'cooling/pumpFuse.running', how: 'reference' },
    starting: { type: 'number', id: 'cooling/pumpFuse.starting', how: 'literal' },
    wire: { type: 'number', id: 'cooling/pumpFuse.wire', how: 'literal' },
    volts: { type: 'number', id: 'cooling/pumpFuse.volts', how: 'assumed-default' },
  })
  expect([...(ledger.shown.get('cooling')?.values() ?? [])]).toEqual([
    { type: 'number', id: 'cooling/inletLimit', linked: true, anchor: 'inletLimit' },
    { type: 'number', id: 'cooling/pumpDraw', linked: true, anchor: 'pumpDraw' },
    { type: 'number', id: 'cooling/supply', linked: true, anchor: 'supply' },
    { type: 'number', id: 'cooling/back', linked: true, anchor: 'back' },
    { type: 'number', id: 'cooling/supply + back', linked: true },
    { type: 'block', id: 'cooling/pumpFuse' },
    { type: 'nominal', text: '10 A' },
    { type: 'number', id: 'cooling/pumpFuse.fuse', linked: true },
  ])
})
