"""Print friction factors and loss coefficients from the independent library fluids, over a grid."""

import math
import sys

try:
    from fluids.fittings import Hooper2K, bend_rounded, change_K_basis, contraction_sharp, diffuser_sharp
    from fluids.friction import Churchill_1977, Colebrook, helical_laminar_fd_White
except ImportError:
    sys.exit("the package python3-fluids is not installed")

REYNOLDS = [10 ** (exponent / 10) for exponent in range(0, 71)]
FITTINGS = {
    "elbow90": "Elbow, 90°, Standard (R/D = 1), Screwed",
    "elbow90Welded": "Elbow, 90°, Standard (R/D = 1), Flanged/welded",
    "elbow90LongRadius": "Elbow, 90°, Long-radius (R/D = 1.5), All types",
    "mitre90": "Elbow, 90°, Mitered (R/D = 1.5), 1 weld (90° angle)",
    "elbow45": "Elbow, 45°, Standard (R/D = 1), All types",
    "elbow45LongRadius": "Elbow, 45°, Long-radius (R/D 1.5), All types",
    "return180": "Elbow, 180°, Standard (R/D = 1), Flanged/welded",
    "return180LongRadius": "Elbow, 180°, Long-radius (R/D = 1.5), All types",
    "teeRun": "Tee, Run, Screwed",
    "teeRunFlanged": "Tee, Through, Flanged or welded",
    # The library files the tee's branch under elbows.
    "teeBranch": "Elbow, Used as, Standard, Screwed",
    "teeBranchFlanged": "Elbow, Elbow, Standard, Flanged/welded",
    "teeBranchStubIn": "Elbow, Elbow, Stub-in type branch",
    "ballValve": "Valve, Gate, Full line size, Beta = 1",
    "ballValveReduced90": "Valve, Ball, Reduced trim, Beta = 0.9",
    "ballValveReduced80": "Valve, Plug, Reduced trim, Beta = 0.8",
    "globeValve": "Valve, Globe, Standard",
    "angleValve": "Valve, Globe, Angle or Y-type",
    "diaphragmValve": "Valve, Diaphragm, Dam type",
    "butterflyValve": "Valve, Butterfly,",
    "liftCheck": "Valve, Check, Lift",
    "swingCheck": "Valve, Check, Swing",
    "tiltingDiscCheck": "Valve, Check, Tilting-disc",
}


def row(kind, *values):
    print(kind, *(value if isinstance(value, str) else repr(value) for value in values), sep=",")


# Wall: Reynolds number, relative roughness, Churchill's and Colebrook's factor.
for reynolds in REYNOLDS:
    for roughness in (0.0, 1e-5, 1e-4, 5e-4, 2e-3, 1e-2, 5e-2):
        row("wall", reynolds, roughness, Churchill_1977(reynolds, roughness), Colebrook(reynolds, roughness))

# Fitting: its name here, Reynolds number, bore in m, coefficient. The library takes the bore in inches.
for name, key in FITTINGS.items():
    for reynolds in REYNOLDS[::5]:
        for bore_in in (0.5, 0.75, 1.0, 1.5):
            row("fitting", name, reynolds, 0.0254 * bore_in, Hooper2K(Di=bore_in, Re=reynolds, name=key))

# Curved pipe: Reynolds number, radius over bore, friction over that of the straight pipe.
for reynolds in REYNOLDS:
    for radius in (1.0, 2.0, 3.0, 5.0, 10.0, 30.0):
        if reynolds * math.sqrt(0.5 / radius) < 2000:
            row("curved", reynolds, radius, helical_laminar_fd_White(reynolds, 1.0, 2 * radius) * reynolds / 64)

# Turbulent bend: friction factor, angle, radius over bore, coefficient of bend and its length.
for friction in (0.015, 0.02, 0.03, 0.04, 0.05):
    for degrees in (15, 45, 60, 90, 135, 180):
        for radius in (1.0, 1.5, 3.0, 5.0, 10.0, 30.0):
            angle = math.radians(degrees)
            row("bend", friction, angle, radius,
                bend_rounded(Di=1.0, angle=degrees, fd=friction, rc=radius, method="Rennels"))

# Steps: Reynolds number upstream, smaller bore over larger, coefficient on the velocity upstream.
for reynolds in REYNOLDS:
    friction = Churchill_1977(reynolds, 0.0)
    for ratio in (0.2, 0.4, 0.6, 0.7, 0.76, 0.82, 0.9, 0.98):
        down = contraction_sharp(Di1=1.0, Di2=ratio, fd=friction, Re=reynolds, method="Hooper")
        row("down", reynolds, ratio, change_K_basis(down, ratio, 1.0))
        row("up", reynolds, ratio, diffuser_sharp(Di1=ratio, Di2=1.0, fd=friction, Re=reynolds, method="Hooper"))
