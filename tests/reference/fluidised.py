"""fluidised.csv: voidage of a lifted bed, by Ergun extended (high) and by Wen and Yu's drag (low)."""

import us
from bed import EXACT, SOLVED, ergun_speed, ergun_voidage, ergun_voidage_by_cubic, wen_yu_voidage
from media import CELSIUS, MEDIA, kelvin
from water import sr608

NAME = "fluidised.csv"
COLUMNS = ["id", "source", "diameter_m", "sphericity", "voidage", "particle_density_kg_m3", "density_kg_m3",
           "viscosity_pa_s", "speed_m_s", "voidage_high", "voidage_low", "relative_tolerance"]
TOLERANCE = 1e-12
AGAIN = 1e-11  # brentq may stop a few bits apart on another machine, and speeds are multiples of a speed it found
TIMES = [0.5, 1.0, 1.5, 2.0, 4.0, 8.0]
US_MEDIA = ["sand_20x30", "anthracite", "carbon_coconut_12x40", "calcite_16x40", "resin_cation", "resin_anion"]
US_FAHRENHEIT = [54, 77]
GPM_PER_SQUARE_FOOT = [5, 8, 12, 15]


def row_of(key, medium, temperature, speed, through_pint=False):
    """`speed` is in m/s, or, as text, a multiple of the speed at which Ergun lifts the bed."""
    rho, mu = sr608(temperature)
    d, psi, solid = medium.diameter, medium.sphericity, medium.particle_density
    if isinstance(speed, str):
        speed = float(speed) * ergun_speed(d, psi, medium.voidage, solid, rho, mu)
    return {"id": key, "source": f"{SOLVED} (high); {EXACT} (low)" + ("; " + us.SOURCE if through_pint else ""),
            "diameter_m": d, "sphericity": psi, "voidage": medium.voidage, "particle_density_kg_m3": solid,
            "density_kg_m3": rho, "viscosity_pa_s": mu, "speed_m_s": speed,
            "voidage_high": ergun_voidage(d, psi, speed, solid, rho, mu),
            "voidage_low": wen_yu_voidage(d, speed, solid, rho, mu), "relative_tolerance": TOLERANCE}


def pending():
    """(id, function that makes the row) for every row of the table, in order; cheap until called."""
    for name, medium in MEDIA.items():
        for celsius in CELSIUS:
            for times in TIMES:
                key = f"{name}_{celsius}c_x{times:g}"
                yield key, lambda k=key, m=medium, t=kelvin(celsius), v=repr(times): row_of(k, m, t, v)
    for name in US_MEDIA:
        for fahrenheit in US_FAHRENHEIT:
            for flow in GPM_PER_SQUARE_FOOT:
                key = f"us_{name}_{fahrenheit}f_{flow}gpm_ft2"
                yield key, lambda k=key, m=MEDIA[name], t=us.kelvin(fahrenheit), v=us.metres_per_second(flow): (
                    row_of(k, m, t, v, True))


def crosscheck():
    """(what, holds) pairs: brentq against the cubic; both agree where there is no voidage below 1."""
    worst, apart = 0.0, 0.0
    for name, medium in MEDIA.items():
        for celsius in CELSIUS:
            rho, mu = sr608(kelvin(celsius))
            d, psi, solid = medium.diameter, medium.sphericity, medium.particle_density
            begins = ergun_speed(d, psi, medium.voidage, solid, rho, mu)
            for times in TIMES + [16.0, 64.0]:
                found = ergun_voidage(d, psi, times * begins, solid, rho, mu)
                exact = ergun_voidage_by_cubic(d, psi, times * begins, solid, rho, mu)
                if (found is None) != (exact >= 1):
                    yield f"{name} at {celsius} degrees, {times} times: brentq {found} and the cubic {exact}", False
                elif found is not None:
                    worst = max(worst, float(abs(found - exact) / exact))
            apart = max(apart, abs(ergun_voidage(d, psi, begins, solid, rho, mu) / medium.voidage - 1))
    yield f"fluidised: brentq and the cubic: worst relative difference {worst:.1e}", worst < TOLERANCE / 10
    yield f"fluidised: voidage at the Ergun speed and at rest: worst relative difference {apart:.1e}", apart < TOLERANCE / 10
