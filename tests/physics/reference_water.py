"""Print water's properties and boiling points by IAPWS-IF97, R12-08 and R15-11, from an independent library."""

import sys

try:
    import iapws
    from iapws.iapws97 import _TSat_P
except ImportError:
    sys.exit("the package python3-iapws is not installed")

# kind, temperature degC, density, viscosity Pa s, specific heat J/(kg K), conductivity W/(m K)
for half in range(0, 241):
    celsius = max(0.01, half / 2)
    pressure_MPa = 0.101325 if celsius < 98 else 0.3
    water = iapws.IAPWS97(T=celsius + 273.15, P=pressure_MPa)
    print("liquid", celsius, water.rho, water.mu, 1000 * water.cp, water.k, sep=",")

# kind, absolute pressure Pa, temperature degC
for kPa in (0.7, 1, 5, 20, 50, 70, 101.325, 150, 200, 300, 500, 1000, 5000, 20000):
    print("boiling", 1000 * kPa, _TSat_P(kPa / 1000) - 273.15, sep=",")
