#!/usr/bin/env python3
"""The loop of circulation.cpp solved the straightforward way with SciPy (python3-scipy): a bracketing root
finder over flow around one over temperature, each element by the same formulas. Flow in the loop is laminar,
so the laws of turbulent flow are left out. Prints the flow and the time it takes."""

import math
import time

from scipy.optimize import brentq

GRAVITY = 9.80665
POWER_W, BLOCK_DEGC, BLOCK_W_PER_K, AIR_DEGC = 1500, 20, 200, -20
HOSE_M, END_SHARE, PIECES, HOSE_W_PER_K = 0.019, 0.75, 19, 0.4
SUPPLY_M, SUPPLY_FALL_M, RETURN_M, RETURN_RISE_M, CHAMBER_M = 1.2, 0.2, 1.0, 0.4, 0.25
BEND_RAD, SHARE_AT_OUTLET, CHAMBER_BORE_M = 1.5, 0.5, 0.050


def density(t):
    return 1081.083 - 0.338265 * t - 0.00243064 * t * t


def viscosity(t):
    return math.exp(-4.794039 - 0.04378271 * t + 3.2411093e-4 * t * t - 1.3528125e-6 * t**3)


def specific_heat(t):
    return 3203.38 + 3.85965 * t


def friction(reynolds):
    if reynolds < 1:
        return 64 / reynolds
    a = (2.457 * math.log(1 / (7 / reynolds) ** 0.9)) ** 16
    b = (37530 / reynolds) ** 16
    return 8 * ((8 / reynolds) ** 12 + (a + b) ** -1.5) ** (1 / 12)


def bend(reynolds, angle_rad, radii):
    dean = reynolds * math.sqrt(1 / (2 * radii))
    if dean <= 11.6:
        return 0
    ratio = 1 / (1 - (1 - (11.6 / dean) ** 0.45) ** (1 / 0.45))
    return 64 / reynolds * (ratio - 1) * angle_rad * radii


def hose_end(reynolds):
    step = 1 / END_SHARE**4
    own = reynolds / END_SHARE
    on_own = friction(own) * 0.04 / (END_SHARE * HOSE_M) + 2 * (1 - END_SHARE**4)
    return (1.2 + 160 / reynolds) * (step - 1) + on_own * step


def two_k(reynolds, k1, k_infinity):
    return k1 / reynolds + k_infinity * (1 + 0.0254 / HOSE_M)


def piece_loss(reynolds, length_m, first, last):
    k = friction(reynolds) * length_m / HOSE_M + bend(reynolds, BEND_RAD / PIECES, 5)
    if first:
        k += 160 / reynolds + 0.5 + hose_end(reynolds)
    if last:
        k += hose_end(reynolds) + two_k(reynolds, 800, 0.40) + two_k(reynolds, 300, 0.10) + 1
    return k


def elements():
    """(kind, length, rise, first, last) in the direction of flow."""
    def hose(length_m, rise_m):
        return [("hose", length_m / PIECES, rise_m / PIECES, i == 0, i == PIECES - 1) for i in range(PIECES)]
    jacket_m = SUPPLY_FALL_M - CHAMBER_M - RETURN_RISE_M
    return (hose(SUPPLY_M, -SUPPLY_FALL_M) + [("chamber", CHAMBER_M, CHAMBER_M, False, False)] +
            hose(RETURN_M, RETURN_RISE_M) + [("jacket", 0.5, jacket_m, False, False)])


def mean_density(ends, halfway, ntu):
    """Over an exponential profile, by Simpson's rule in eight parts."""
    total, parts = 0, 8
    for i in range(parts + 1):
        x = i / parts
        u = 1 - x if ntu == 0 else (math.exp(-ntu * x) - math.exp(-ntu)) / (1 - math.exp(-ntu))
        weight = 1 if i in (0, parts) else (4 if i % 2 else 2)
        total += weight * density(ends[1] + (ends[0] - ends[1]) * u)
    return total / (3 * parts)


def march(flow, entry_degc, loop):
    """Temperature after once round, and drive less loss."""
    t, net_pa = entry_degc, 0
    for kind, length_m, rise_m, first, last in loop:
        start, ntu = t, 0
        for _ in range(6):
            halfway = (start + t) / 2
            capacity = flow * specific_heat(halfway)
            if kind == "chamber":
                t = start + POWER_W / capacity
            else:
                exchange = HOSE_W_PER_K / PIECES if kind == "hose" else BLOCK_W_PER_K
                level = AIR_DEGC if kind == "hose" else BLOCK_DEGC
                ntu = exchange / capacity
                t = level + (start - level) * math.exp(-ntu)
        if kind == "chamber":
            rho = SHARE_AT_OUTLET * density(t) + (1 - SHARE_AT_OUTLET) * density(start)
        else:
            rho = mean_density((start, t), halfway, ntu)
        net_pa -= GRAVITY * rho * rise_m
        if kind == "jacket":
            continue
        bore_m = HOSE_M if kind == "hose" else CHAMBER_BORE_M
        area_m2 = math.pi / 4 * bore_m**2
        mu = viscosity((start + t) / 2)
        reynolds = flow * bore_m / (area_m2 * mu)
        k = piece_loss(reynolds, length_m, first, last) if kind == "hose" else friction(reynolds) * length_m / bore_m
        net_pa -= k * flow**2 / (2 * rho * area_m2**2)
    return t, net_pa


def solve():
    loop = elements()

    def net_pa(flow):
        entry = brentq(lambda t: march(flow, t, loop)[0] - t, -36, 100, xtol=1e-9)
        return march(flow, entry, loop)[1]

    return brentq(net_pa, 0.005, 0.1, xtol=1e-9)


def main():
    times = []
    for _ in range(5):
        start = time.perf_counter()
        flow = solve()
        times.append(time.perf_counter() - start)
    print(f"{flow:.6f} kg/s, median {1e6 * sorted(times)[2]:.0f} us")


if __name__ == "__main__":
    main()
