// The heat and the course of fermentation.
#pragma once

#include "wortmath/fermentation/course.hpp"
#include "wortmath/fermentation/course_time.hpp"
#include "wortmath/fermentation/heat.hpp"
#include "wortmath/fermentation/temperature_rise.hpp"

namespace wortmath::fermentation {

inline constexpr auto families = list_families(course, course_time, heat, temperature_rise);

}  // namespace wortmath::fermentation
