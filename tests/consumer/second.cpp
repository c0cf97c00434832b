#include "wortmath/wortmath.hpp"

double from_the_second_unit(double gravity);
double from_the_second_unit(double gravity) { return wortmath::extract::from_gravity(wortmath::unit::gravity_20_20(gravity)).value; }
