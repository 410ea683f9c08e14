"""The loop of solve.ts in CPython: fluids for friction, scipy's brentq for the crossing.

In: the loop as JSON, the first argument. Out: JSON with the flow in m3/s, processor seconds per solve
(median of the rounds) and the versions. `seconds` is hose by hose with the friction factor fluids takes
by itself, Colebrook's to the last digits in two explicit steps (Clamond); `mergedSeconds` the same with
hoses of one bore taken together beforehand; `equationSeconds` hose by hose with fluids' general solution
of the equation.
"""
import json
import math
import statistics
import sys
import time

import fluids
import scipy
from fluids.core import Reynolds
from fluids.friction import Colebrook, friction_factor
from scipy.optimize import brentq

loop = json.loads(sys.argv[1])
density, viscosity = loop["density"], loop["viscosity"]


def by_equation(Re, eD):
    return Colebrook(Re, eD) if Re > 2040 else 64 / Re


def merged():
    bores = {}
    for hose in loop["hoses"]:
        whole = bores.setdefault(hose["bore"], {"bore": hose["bore"], "length": 0.0, "fittings": 0.0})
        whole["length"] += hose["length"]
        whole["fittings"] += hose["fittings"]
    return list(bores.values())


def drop(flow, hoses, friction):
    total = 0.0
    for hose in hoses:
        bore = hose["bore"]
        speed = flow / (math.pi / 4 * bore**2)
        reynolds = Reynolds(V=speed, D=bore, rho=density, mu=viscosity)
        factor = friction(Re=reynolds, eD=loop["roughness"] / bore)
        losses = factor * hose["length"] / bore + hose["fittings"]
        total += losses * density * speed**2 / 2
    for part in loop["parts"]:
        total += part["drop"] * (flow / part["referenceFlow"]) ** 2
    return total


def spare(flow, hoses, friction):
    return loop["shutOff"] * (1 - (flow / loop["freeFlow"]) ** 2) - drop(flow, hoses, friction)


def solve(hoses, friction):
    least, most = loop["freeFlow"] * 1e-6, loop["freeFlow"]
    return brentq(spare, least, most, args=(hoses, friction), xtol=1e-18, rtol=1e-14)


def seconds(hoses, friction, count):
    start = time.process_time()
    for _ in range(count):
        solve(hoses, friction)
    return (time.process_time() - start) / count


def median(hoses, friction, count):
    seconds(hoses, friction, count)
    return statistics.median(seconds(hoses, friction, count) for _ in range(loop["rounds"]))


print(
    json.dumps(
        {
            "flow": solve(loop["hoses"], friction_factor),
            "seconds": median(loop["hoses"], friction_factor, loop["solves"]),
            "mergedSeconds": median(merged(), friction_factor, loop["solves"]),
            "equationSeconds": median(loop["hoses"], by_equation, loop["solves"] // 10),
            "versions": f"CPython {sys.version.split()[0]}, fluids {fluids.__version__}, scipy {scipy.__version__}",
        }
    )
)
