// With second.cpp: everything included in two translation units links, and both see the same models.
#include "wortmath/wortmath.hpp"

double from_the_second_unit(double gravity);

int main() {
    using namespace wortmath::literals;
    double const here = wortmath::extract::from_gravity(1.048_sg).value;
    return here == from_the_second_unit(1.048) && here > 11.0 && here < 12.5 ? 0 : 1;
}
