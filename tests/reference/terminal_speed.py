"""terminal_speed.csv: the speed at which a single grain settles, by Haider and Levenspiel."""

import us
from bed import EXACT, settling_nonspherical, settling_sphere, settling_sphere_exactly
from media import CELSIUS, FAHRENHEIT, MEDIA, kelvin, metres
from minimum_fluidisation import PRINTED
from water import sr608

NAME = "terminal_speed.csv"
COLUMNS = ["id", "source", "form", "diameter_m", "sphericity", "particle_density_kg_m3", "density_kg_m3", "viscosity_pa_s",
           "terminal_speed_m_s", "relative_tolerance"]
EXACT_TOLERANCE = 1e-13
SPHERE = "fluids 1.3.1 v_terminal Haider_Levenspiel"
SPHERE_TOLERANCE = 1e-12
SPHERES_MM = [0.3, 0.5, 0.68, 1.0]
SPHERE_DENSITIES = [1085.0, 1260.0, 2650.0]


def row_of(key, form, size_mm, sphericity, solid, temperature, through_pint=False):
    rho, mu = sr608(temperature)
    d = metres(size_mm)
    if form == "sphere":
        source, speed, tolerance = SPHERE, settling_sphere(d, solid, rho, mu), SPHERE_TOLERANCE
    else:
        source, speed, tolerance = EXACT, settling_nonspherical(d, sphericity, solid, rho, mu), EXACT_TOLERANCE
    return {"id": key, "source": source + ("; " + us.SOURCE if through_pint else ""), "form": form, "diameter_m": d,
            "sphericity": sphericity, "particle_density_kg_m3": solid, "density_kg_m3": rho, "viscosity_pa_s": mu,
            "terminal_speed_m_s": speed, "relative_tolerance": tolerance}


def grains():
    """(name, form, size in mm, sphericity, particle density): finest grain and effective size of every medium, spheres."""
    for name, medium in MEDIA.items():
        for what, size in (("lower", medium.lower_mm), ("es", medium.effective_size_mm)):
            yield f"{name}_{what}", "nonspherical", size, medium.sphericity, medium.particle_density
    for solid in SPHERE_DENSITIES:
        for size in SPHERES_MM:
            yield f"sphere_{solid:g}_{size:g}", "sphere", size, 1.0, solid


def pending():
    """(id, function that makes the row) for every row of the table, in order; cheap until called."""
    for name, *grain in grains():
        for celsius in CELSIUS:
            key = f"{name}_{celsius}c"
            yield key, lambda k=key, g=grain, t=kelvin(celsius): row_of(k, *g, t)
    for name, *grain in grains():
        if name.endswith("_es") or name.endswith("0.68"):
            for fahrenheit in FAHRENHEIT:
                key = f"us_{name}_{fahrenheit}f"
                yield key, lambda k=key, g=grain, t=us.kelvin(fahrenheit): row_of(k, *g, t, True)


def crosscheck():
    """(what, holds) pairs: fluids' sphere at 50 digits, the printed figures, and how far the two forms are apart at psi = 1."""
    worst, apart = 0.0, []
    for solid in SPHERE_DENSITIES:
        for size in SPHERES_MM:
            for celsius in CELSIUS:
                asked = (metres(size), solid, *sr608(kelvin(celsius)))
                exact = settling_sphere_exactly(*asked)
                worst = max(worst, float(abs(settling_sphere(*asked) - exact) / exact))
                apart.append(float(settling_nonspherical(metres(size), 1.0, *asked[1:]) / exact - 1))
    yield f"settling: fluids' sphere and 50 digits: worst relative difference {worst:.1e}", worst < SPHERE_TOLERANCE
    yield (f"settling: nonspherical form at psi = 1 over the sphere form: {min(apart):+.4f} to {max(apart):+.4f} (worst of both)",
           max(abs(gap) for gap in apart) < 0.2)
    rho, mu = sr608(kelvin(15))
    for name, (medium, wanted, _, _) in PRINTED.items():
        asked = (medium.particle_density, rho, mu)
        found = float(settling_nonspherical(medium.diameter, medium.sphericity, *asked)) * 3600
        yield f"{name}: settling printed {wanted}, found {found:.4f} m/h", abs(found - float(wanted)) <= 0.051
