"""The beds the hydraulic tables are made of, and the temperatures and flows that are asked.

Middle values of common ranges, set down here once: nothing is read from our own catalogue, so a change there
does not move a reference value.
"""

from dataclasses import dataclass
from fractions import Fraction
from typing import Optional


@dataclass(frozen=True)
class Medium:
    """Sizes in mm, particle density (in water) in kg/m3; sieves None and uniformity 1 for grains of one size."""

    lower_mm: Optional[float]
    upper_mm: Optional[float]
    effective_size_mm: float
    uniformity: float
    particle_density: float
    sphericity: float
    voidage: float

    @property
    def diameter(self):
        """The effective size in metres: the nearest double to the exact quotient."""
        return metres(self.effective_size_mm)


def metres(millimetres):
    return float(Fraction(repr(float(millimetres))) / 1000)


MEDIA = {
    "sand_20x30": Medium(0.6, 0.85, 0.65, 1.3, 2600.0, 0.75, 0.435),
    "sand_filter": Medium(0.3, 1.18, 0.5, 1.55, 2600.0, 0.75, 0.435),
    "anthracite": Medium(0.6, 2.0, 1.0, 1.575, 1600.0, 0.53, 0.55),
    "garnet_30x60": Medium(0.25, 0.6, 0.3, 1.5, 3900.0, 0.6, 0.515),
    "carbon_coconut_8x30": Medium(0.6, 2.36, 0.85, 1.7, 1400.0, 0.75, 0.475),
    "carbon_coconut_12x40": Medium(0.425, 1.7, 0.65, 1.6, 1400.0, 0.75, 0.475),
    "carbon_coconut_20x50": Medium(0.3, 0.85, 0.4, 1.45, 1400.0, 0.75, 0.475),
    "carbon_bituminous_8x30": Medium(0.6, 2.36, 0.9, 1.7, 1425.0, 0.75, 0.475),
    "carbon_bituminous_12x40": Medium(0.425, 1.7, 0.65, 1.6, 1425.0, 0.75, 0.475),
    "calcite_16x40": Medium(0.425, 1.18, 0.625, 1.55, 2705.0, 0.75, 0.44),
    "resin_cation": Medium(0.3, 1.18, 0.5, 1.4, 1270.0, 1.0, 0.375),
    "resin_anion": Medium(0.3, 1.18, 0.5, 1.4, 1085.0, 1.0, 0.375),
    "sand_manganese": Medium(0.25, 0.85, 0.325, 1.45, 2500.0, 0.75, 0.45),
    "glass_crushed": Medium(0.3, 1.18, 0.6, 1.45, 2500.0, 0.75, 0.45),
}

# The beds whose expansion is asked.
EXPANDED = {
    "carbon_12x40": Medium(0.425, 1.7, 0.65, 1.7, 1400.0, 0.75, 0.5),
    "sand_045_118": Medium(0.45, 1.18, 0.55, 1.5, 2650.0, 0.8, 0.42),
    "sand_filter": MEDIA["sand_filter"],
    "anthracite": Medium(0.6, 2.0, 1.0, 1.575, 1600.0, 0.6, 0.5),
    "resin_cation": MEDIA["resin_cation"],
    "calcite_16x40": MEDIA["calcite_16x40"],
    "resin_one_size": Medium(None, None, 0.68, 1.0, 1260.0, 1.0, 0.38),
}

CELSIUS = [5, 15, 25]
FAHRENHEIT = [40, 54, 77]


def kelvin(celsius):
    """The nearest double to celsius + 273.15."""
    return float(Fraction(repr(celsius)) + Fraction("273.15"))


def metres_per_second(metres_per_hour):
    return float(Fraction(repr(metres_per_hour)) / 3600)
