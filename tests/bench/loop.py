"""The loop of solve.ts in CPython: fluids for friction, scipy's brentq for the crossing.

In: the loop as JSON, the first argument. Out: JSON with the flow in m3/s, seconds per solve (median of
the rounds) and the versions. `seconds` is with the friction factor fluids takes by itself, an explicit
formula good to the last digits (Clamond); `equationSeconds` with Colebrook's equation itself solved.
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


def drop(flow, friction):
    total = 0.0
    for hose in loop["hoses"]:
        bore = hose["bore"]
        speed = flow / (math.pi / 4 * bore**2)
        reynolds = Reynolds(V=speed, D=bore, rho=density, mu=viscosity)
        factor = friction(Re=reynolds, eD=loop["roughness"] / bore)
        losses = factor * hose["length"] / bore + hose["fittings"]
        total += losses * density * speed**2 / 2
    for part in loop["parts"]:
        total += part["drop"] * (flow / part["referenceFlow"]) ** 2
    return total


def spare(flow, friction):
    return loop["shutOff"] * (1 - (flow / loop["freeFlow"]) ** 2) - drop(flow, friction)


def solve(friction):
    return brentq(spare, loop["freeFlow"] * 1e-6, loop["freeFlow"], args=(friction,), xtol=1e-18, rtol=1e-14)


def seconds(friction, count):
    start = time.perf_counter()
    for _ in range(count):
        solve(friction)
    return (time.perf_counter() - start) / count


def median(friction, count):
    seconds(friction, count)
    return statistics.median(seconds(friction, count) for _ in range(loop["rounds"]))


print(
    json.dumps(
        {
            "flow": solve(friction_factor),
            "seconds": median(friction_factor, loop["solves"]),
            "equationSeconds": median(by_equation, loop["solves"] // 10),
            "versions": f"CPython {sys.version.split()[0]}, fluids {fluids.__version__}, scipy {scipy.__version__}",
        }
    )
)
