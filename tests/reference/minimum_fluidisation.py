"""minimum_fluidisation.csv: the speed at which a bed begins to lift, by Wen and Yu and by Ergun."""

import us
from bed import EXACT, SOLVED, ergun_speed, ergun_speed_by_square, wen_yu_speed
from media import CELSIUS, FAHRENHEIT, MEDIA, Medium, kelvin
from water import sr608

NAME = "minimum_fluidisation.csv"
COLUMNS = ["id", "source", "diameter_m", "sphericity", "voidage", "particle_density_kg_m3", "density_kg_m3",
           "viscosity_pa_s", "wen_yu_m_s", "ergun_m_s", "relative_tolerance"]
TOLERANCE = 1e-11  # sqrt(33.7^2 + 0.0408 Ga) - 33.7 in doubles loses digits on small light grains

# At 15 degrees: medium, settling speed (form nonspherical), Wen-Yu and Ergun speed in m/h, as printed in the notes.
PRINTED = {
    "sand 0.60": (Medium(None, None, 0.6, 1, 2650.0, 0.8, 0.42), "276.0", "10.9", "9.8"),
    "sand 0.85": (Medium(None, None, 0.85, 1, 2650.0, 0.8, 0.42), "368.9", "21.0", "19.0"),
    "anthracite 1.10": (Medium(None, None, 1.1, 1, 1600.0, 0.6, 0.5), "190.8", "13.0", "12.9"),
    "garnet 0.35": (Medium(None, None, 0.35, 1, 4000.0, 0.65, 0.48), "205.6", "6.8", "6.8"),
    "carbon 0.90": (Medium(None, None, 0.9, 1, 1400.0, 0.75, 0.5), "152.0", "6.0", "9.1"),
    "resin 0.70 of 1260": (Medium(None, None, 0.7, 1, 1260.0, 1.0, 0.38), "118.8", "2.4", "2.3"),
    "resin 0.70 of 1080": (Medium(None, None, 0.7, 1, 1080.0, 1.0, 0.38), "46.3", "0.7", "0.7"),
}


def row_of(key, medium, temperature, through_pint):
    rho, mu = sr608(temperature)
    d, solid = medium.diameter, medium.particle_density
    return {"id": key, "source": f"{EXACT} (Wen-Yu); {SOLVED}" + ("; " + us.SOURCE if through_pint else ""),
            "diameter_m": d, "sphericity": medium.sphericity, "voidage": medium.voidage, "particle_density_kg_m3": solid,
            "density_kg_m3": rho, "viscosity_pa_s": mu, "wen_yu_m_s": wen_yu_speed(d, solid, rho, mu),
            "ergun_m_s": ergun_speed(d, medium.sphericity, medium.voidage, solid, rho, mu), "relative_tolerance": TOLERANCE}


def pending():
    """(id, function that makes the row) for every row of the table, in order; cheap until called."""
    for name, medium in MEDIA.items():
        for celsius in CELSIUS:
            key = f"{name}_{celsius}c"
            yield key, lambda k=key, m=medium, t=kelvin(celsius): row_of(k, m, t, False)
    for name, medium in MEDIA.items():
        for fahrenheit in FAHRENHEIT:
            key = f"us_{name}_{fahrenheit}f"
            yield key, lambda k=key, m=medium, t=us.kelvin(fahrenheit): row_of(k, m, t, True)


def in_doubles(d, solid, rho, mu):
    """Wen and Yu's formula as anyone would write it."""
    reynolds = (33.7**2 + 0.0408 * (d**3 * rho * (solid - rho) * 9.80665 / mu**2)) ** 0.5 - 33.7
    return reynolds * mu / (rho * d)


def crosscheck():
    """(what, holds) pairs: brentq against the quadratic, doubles against 50 digits, the printed figures."""
    worst, lost = 0.0, 0.0
    for medium in MEDIA.values():
        for celsius in CELSIUS:
            rho, mu = sr608(kelvin(celsius))
            asked = (medium.diameter, medium.sphericity, medium.voidage, medium.particle_density, rho, mu)
            exact = ergun_speed_by_square(*asked)
            worst = max(worst, float(abs(ergun_speed(*asked) - exact) / exact))
            exact = wen_yu_speed(medium.diameter, medium.particle_density, rho, mu)
            lost = max(lost, float(abs(in_doubles(medium.diameter, medium.particle_density, rho, mu) - exact) / exact))
    yield f"minimum fluidisation: brentq and the quadratic: worst relative difference {worst:.1e}", worst < 1e-14
    yield f"minimum fluidisation: Wen-Yu in doubles and at 50 digits: worst relative difference {lost:.1e}", lost < TOLERANCE / 3
    rho, mu = sr608(kelvin(15))
    for name, (medium, _, wen_yu, ergun) in PRINTED.items():
        d, solid = medium.diameter, medium.particle_density
        for what, wanted, found in (("Wen-Yu", wen_yu, wen_yu_speed(d, solid, rho, mu)),
                                    ("Ergun", ergun, ergun_speed(d, medium.sphericity, medium.voidage, solid, rho, mu))):
            speed = float(found) * 3600
            yield f"{name}: {what} printed {wanted}, found {speed:.4f} m/h", abs(speed - float(wanted)) <= 0.051
