"""packed_bed.csv: pressure gradient in a bed at rest, by Ergun."""

import us
from bed import ERGUN, Ergun
from media import CELSIUS, FAHRENHEIT, MEDIA, kelvin, metres, metres_per_second
from mpmath import mpf
from water import sr608

NAME = "packed_bed.csv"
COLUMNS = ["id", "source", "diameter_m", "sphericity", "voidage", "speed_m_s", "density_kg_m3", "viscosity_pa_s",
           "pressure_gradient_pa_m", "relative_tolerance"]
TOLERANCE = 1e-13
METRES_PER_HOUR = [5, 10, 20, 37]
GPM_PER_SQUARE_FOOT = [2, 5, 10, 15]

# At 15 degrees and 10 m/h: diameter mm, sphericity, voidage, Pa per metre, as printed in the notes these tables come from.
PRINTED = [(0.60, 0.80, 0.42, "9560.83"), (0.85, 0.80, 0.42, "4809.55"), (1.10, 0.60, 0.50, "2257.97"),
           (0.35, 0.65, 0.48, "22670.09"), (0.90, 0.75, 0.50, "2160.51"), (0.80, 0.75, 0.45, "4506.34"),
           (0.70, 1.0, 0.38, "6994.10")]


def gradient(d, sphericity, voidage, speed, rho, mu):
    return Ergun(sphericity * d, voidage, speed, rho, mu, 1.0)


def gradient_exactly(d, sphericity, voidage, speed, rho, mu):
    size, e, v = mpf(sphericity) * mpf(d), mpf(voidage), mpf(speed)
    return (150 * mpf(mu) * v * (1 - e) ** 2 / (size**2 * e**3) + mpf("1.75") * mpf(rho) * v**2 * (1 - e) / (size * e**3))


def row_of(key, medium, temperature, speed, through_pint):
    rho, mu = sr608(temperature)
    return {"id": key, "source": ERGUN + ("; " + us.SOURCE if through_pint else ""), "diameter_m": medium.diameter,
            "sphericity": medium.sphericity, "voidage": medium.voidage, "speed_m_s": speed, "density_kg_m3": rho,
            "viscosity_pa_s": mu, "relative_tolerance": TOLERANCE,
            "pressure_gradient_pa_m": gradient(medium.diameter, medium.sphericity, medium.voidage, speed, rho, mu)}


def beds():
    """The media whose bed at rest differs: two that differ in density only are one here."""
    seen = {}
    for name, medium in MEDIA.items():
        seen.setdefault((medium.diameter, medium.sphericity, medium.voidage), (name, medium))
    return list(seen.values())


def pending():
    """(id, function that makes the row) for every row of the table, in order; cheap until called."""
    for name, medium in beds():
        for celsius in CELSIUS:
            for speed in METRES_PER_HOUR:
                key = f"{name}_{celsius}c_{speed}mh"
                yield key, lambda k=key, m=medium, t=kelvin(celsius), v=metres_per_second(speed): row_of(k, m, t, v, False)
    for name, medium in beds():
        for fahrenheit in FAHRENHEIT:
            for flow in GPM_PER_SQUARE_FOOT:
                key = f"us_{name}_{fahrenheit}f_{flow}gpm_ft2"
                yield key, lambda k=key, m=medium, t=us.kelvin(fahrenheit), v=us.metres_per_second(flow): row_of(k, m, t, v, True)


def crosscheck():
    """(what, holds) pairs: Ergun of fluids at 50 digits; the printed figures."""
    rho, mu = sr608(kelvin(15))
    worst = 0.0
    for _, medium in beds():
        for speed in METRES_PER_HOUR:
            asked = (medium.diameter, medium.sphericity, medium.voidage, metres_per_second(speed), rho, mu)
            exact = gradient_exactly(*asked)
            worst = max(worst, float(abs(gradient(*asked) - exact) / exact))
    yield f"packed bed: fluids and 50 digits: worst relative difference {worst:.1e}", worst < TOLERANCE / 10
    for size, sphericity, voidage, wanted in PRINTED:
        found = gradient(metres(size), sphericity, voidage, metres_per_second(10), rho, mu)
        yield f"packed bed: {size} mm, printed {wanted}, found {found:.4f}", abs(found - float(wanted)) <= 0.0051
