"""water.csv: density and viscosity of liquid water at 0.1 MPa, 0.01 to 60 degrees Celsius."""

from chemicals.iapws import iapws95_rho
from chemicals.viscosity import mu_IAPWS
from CoolProp.CoolProp import PropsSI
from iapws import IAPWS95
from iapws._iapws import _Liquid
from mpmath import mpf

import us
from media import kelvin

NAME = "water.csv"
COLUMNS = ["id", "source", "temperature_k", "density_kg_m3", "viscosity_pa_s", "density_tolerance", "viscosity_tolerance"]
PRESSURE = 1e5

CELSIUS = [0.01] + [2.5 * step for step in range(1, 25)]
FAHRENHEIT = [33, 35, 40, 45, 50, 54, 55, 60, 65, 68, 70, 75, 77, 80, 85, 86, 90, 95, 100, 110, 120, 130, 140]

# Table 8 of the release as quoted in the tests of the iapws package: kelvin, kg/m3, micropascal second, as printed.
PRINTED = [("260", "997.068360", "3058.36075"), ("298.15", "997.047013", "889.996774"), ("375", "957.009710", "276.207245")]


# Celsius, kg/m3, millipascal second, as printed in the notes these tables were made from.
NOTED = [(0.01, "999.84306", "1.791158"), (5, "999.96598", "1.518198"), (10, "999.70186", "1.305902"),
         (15, "999.10203", "1.137548"), (20, "998.20655", "1.001567"), (25, "997.04701", "0.8899968"),
         (30, "995.64882", "0.7972062"), (40, "992.21576", "0.6527335"), (50, "988.03450", "0.5465265"),
         (60, "983.19525", "0.4660393")]


def sr608(temperature):
    """Density and viscosity by the release for liquid water at 0.1 MPa: what every other table here uses."""
    found = _Liquid(temperature)
    return found["rho"], found["mu"]


def iapws95(temperature):
    found = IAPWS95(T=temperature, P=PRESSURE / 1e6)
    return found.rho, found.mu


def coolprop(temperature):
    return tuple(PropsSI(what, "T", temperature, "P", PRESSURE, "Water") for what in ("D", "V"))


def chemicals(temperature):
    density = iapws95_rho(temperature, PRESSURE)
    return density, mu_IAPWS(temperature, density)


# short name: source, function, relative tolerance of density and of viscosity
BY = {
    "sr608": ("iapws 1.5.5 _Liquid (IAPWS SR6-08)", sr608, 1e-12, 1e-12),
    "iapws95": ("iapws 1.5.5 IAPWS95 (IAPWS-95; viscosity IAPWS-2008)", iapws95, 5e-8, 3.5e-5),
    "coolprop": ("CoolProp 8.0.0 (IAPWS-95; viscosity IAPWS-2008)", coolprop, 5e-8, 3.5e-5),
    "chemicals": ("chemicals 1.5.2 (IAPWS-95; viscosity IAPWS-2008)", chemicals, 5e-8, 3.5e-5),
}


def row_of(key, name, temperature, through_pint):
    source, values, density_tolerance, viscosity_tolerance = BY[name]
    density, viscosity = values(temperature)
    return {"id": key, "source": source + ("; " + us.SOURCE if through_pint else ""), "temperature_k": temperature,
            "density_kg_m3": density, "viscosity_pa_s": viscosity, "density_tolerance": density_tolerance,
            "viscosity_tolerance": viscosity_tolerance}


def half_a_digit(text):
    """Half a unit of the last printed digit, relative to the figure."""
    return 0.5 * 10.0 ** -len(text.split(".")[1]) / float(text)


def printed_row(key, temperature, density, viscosity):
    return {"id": key, "source": "IAPWS SR6-08 Table 8 as quoted in the tests of iapws 1.5.5",
            "temperature_k": float(temperature), "density_kg_m3": float(density), "viscosity_pa_s": float(viscosity + "e-6"),
            "density_tolerance": half_a_digit(density), "viscosity_tolerance": half_a_digit(viscosity)}


def pending():
    """(id, function that makes the row) for every row of the table, in order; cheap until called."""
    for name in BY:
        for celsius in CELSIUS:
            key = f"{name}_{celsius:g}c"
            yield key, lambda k=key, n=name, t=kelvin(celsius): row_of(k, n, t, False)
    for name in ("sr608", "coolprop"):
        for fahrenheit in FAHRENHEIT:
            key = f"us_{name}_{fahrenheit}f"
            yield key, lambda k=key, n=name, t=us.kelvin(fahrenheit): row_of(k, n, t, True)
    for printed in PRINTED:
        key = f"printed_{printed[0]}k"
        yield key, lambda k=key, p=printed: printed_row(k, *p)


def by_hand(temperature):
    """The release's formulas at 50 digits, coefficients typed from it."""
    t = mpf(temperature)
    alpha, beta = 10 / (593 - t), 10 / (t - 232)
    a = [("6.74458446e3", 4), ("-2.22521604e5", 5), ("1.00231247e8", 7), ("-1.63552118e9", 8), ("8.32299658e9", 9)]
    b = ["5.78545292e-3", "-1.53195665e-2", "3.11337859e-2", "-4.23546241e-2", "3.38713507e-2", "-1.19946761e-2"]
    total = mpf("1.93763157e-2") + sum(mpf(factor) * alpha**power for factor, power in a)
    total += sum(mpf(factor) * beta ** (place + 1) for place, factor in enumerate(b))
    volume = mpf("461.51805") * 10 / 100000 * total
    terms = [("280.68", "-1.9"), ("511.45", "-7.7"), ("61.131", "-19.6"), ("0.45903", "-40")]
    return 1 / volume, sum(mpf(factor) * (t / 300) ** mpf(power) for factor, power in terms) / 1000000


def crosscheck():
    """(what, holds) pairs."""
    asked = [kelvin(celsius) for celsius in CELSIUS] + [us.kelvin(fahrenheit) for fahrenheit in FAHRENHEIT]
    worst = max(float(abs(ours - exact) / exact) for t in asked for ours, exact in zip(sr608(t), by_hand(t)))
    yield f"water: SR6-08 by iapws and at 50 digits: worst relative difference {worst:.1e}", worst < 1e-14
    for temperature, density, viscosity in PRINTED:
        for wanted, found, scale in zip((density, viscosity), sr608(float(temperature)), (1, 1e6)):
            gap = abs(found * scale - float(wanted)) / float(wanted)
            yield f"water: Table 8 at {temperature} K says {wanted}", gap <= half_a_digit(wanted) * (1 + 1e-6)
    for name in list(BY)[1:]:
        _, values, *limits = BY[name]
        for place, what in enumerate(("density", "viscosity")):
            worst = max(abs(sr608(t)[place] / values(t)[place] - 1) for t in asked)
            yield f"water: {what} of SR6-08 and {name}: worst relative difference {worst:.2e}", worst < limits[place]
    for celsius, density, viscosity in NOTED:
        found = sr608(kelvin(celsius))
        for wanted, value in ((density, found[0]), (viscosity, found[1] * 1000)):
            yield f"water: SR6-08 at {celsius} degrees is {wanted}, found {value!r}", (
                abs(value - float(wanted)) <= half_a_digit(wanted) * float(wanted) * 1.001)
