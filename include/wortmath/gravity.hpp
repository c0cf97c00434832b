#pragma once

#include "wortmath/gravity/apparent_from_true.hpp"
#include "wortmath/gravity/convert.hpp"
#include "wortmath/gravity/from_baume.hpp"
#include "wortmath/gravity/from_belgian.hpp"
#include "wortmath/gravity/from_brewers_pounds.hpp"
#include "wortmath/gravity/from_density.hpp"
#include "wortmath/gravity/from_oechsle.hpp"
#include "wortmath/gravity/from_points.hpp"
#include "wortmath/gravity/from_twaddell.hpp"
#include "wortmath/gravity/kmw_from_oechsle.hpp"
#include "wortmath/gravity/oechsle_from_kmw.hpp"
#include "wortmath/gravity/pounds_per_us_gallon.hpp"
#include "wortmath/gravity/to_baume.hpp"
#include "wortmath/gravity/to_belgian.hpp"
#include "wortmath/gravity/to_brewers_pounds.hpp"
#include "wortmath/gravity/to_density.hpp"
#include "wortmath/gravity/to_oechsle.hpp"
#include "wortmath/gravity/to_points.hpp"
#include "wortmath/gravity/to_twaddell.hpp"
#include "wortmath/gravity/true_from_apparent.hpp"

namespace wortmath::gravity {
inline constexpr auto families = list_families(to_density, from_density, convert, true_from_apparent, apparent_from_true, to_points, from_points, to_oechsle,
                                               from_oechsle, to_belgian, from_belgian, to_twaddell, from_twaddell, to_brewers_pounds, from_brewers_pounds,
                                               to_baume, from_baume, oechsle_from_kmw, kmw_from_oechsle, pounds_per_us_gallon);
}
