"""The loop of solve.ts in CPython: fluids for friction, scipy's brentq for the crossing.

In: the loop as JSON, the first argument. Out: JSON with the flow in m3/s, seconds per solve (median of
the rounds) and the versions.
"""
import json
import math
import statistics
import sys
import time

import fluids
import scipy
from fluids.core import Reynolds
from fluids.friction import friction_factor
from scipy.optimize import brentq

loop = json.loads(sys.argv[1])
density, viscosity = loop["density"], loop["viscosity"]


def drop(flow):
    total = 0.0
    for hose in loop["hoses"]:
        bore = hose["bore"]
        speed = flow / (math.pi / 4 * bore**2)
        reynolds = Reynolds(V=speed, D=bore, rho=density, mu=viscosity)
        factor = friction_factor(Re=reynolds, eD=loop["roughness"] / bore)
        losses = factor * hose["length"] / bore + hose["fittings"]
        total += losses * density * speed**2 / 2
    for part in loop["parts"]:
        total += part["drop"] * (flow / part["referenceFlow"]) ** 2
    return total


def spare(flow):
    return loop["shutOff"] * (1 - (flow / loop["freeFlow"]) ** 2) - drop(flow)


def solve():
    return brentq(spare, loop["freeFlow"] * 1e-6, loop["freeFlow"], xtol=1e-18, rtol=1e-14)


def seconds(count):
    start = time.perf_counter()
    for _ in range(count):
        solve()
    return (time.perf_counter() - start) / count


seconds(loop["warmUp"])
times = [seconds(loop["solves"]) for _ in range(loop["rounds"])]
print(
    json.dumps(
        {
            "flow": solve(),
            "seconds": statistics.median(times),
            "versions": f"CPython {sys.version.split()[0]}, fluids {fluids.__version__}, scipy {scipy.__version__}",
        }
    )
)
