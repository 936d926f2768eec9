"""Round US values to SI through pint, exactly, then the nearest double."""

from fractions import Fraction

from mpmath import mpf, pi

from vessel_volume import units

SOURCE = "pint 0.25.3"


def through_pint(value, unit, wanted):
    """The converted magnitude as an exact fraction."""
    return Fraction(units.Quantity(Fraction(value), unit).to(wanted).magnitude)


def kelvin(fahrenheit):
    return float(through_pint(fahrenheit, "degF", "kelvin"))


def millimetres(inches):
    return float(through_pint(inches, "inch", "millimetre"))


def metres_per_second(gpm_per_square_foot):
    """From US gallons a minute on a square foot."""
    return float(through_pint(gpm_per_square_foot, "gallon / minute / foot**2", "metre / second"))


def speed_in_vessel(gpm, inches):
    """US gallons a minute through the circle of an inside diameter in inches, nothing taken off for a riser."""
    flow = through_pint(gpm, "gallon / minute", "metre**3 / second")
    diameter = through_pint(inches, "inch", "metre")
    ratio = flow / (diameter * diameter / 4)
    return float(mpf(ratio.numerator) / ratio.denominator / pi)
