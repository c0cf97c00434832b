#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/extract/to_gravity.hpp"
#include "wortmath/refractometer/index.hpp"
#include "wortmath/refractometer/refraction.hpp"

namespace wortmath::refractometer {

struct extract_refraction_models {
    static constexpr const char* question = "How strongly does the extract of this wort refract?";

    struct from_wort : model<struct from_wort, unit::cubic_centimetres_per_gram(unit::original_extract, unit::raw_brix)> {
        static constexpr facts about{
            .source = "additivity of the specific refraction (Lorentz and Lorenz), turned round for a wort of known extract and reading",
            .status = evidence::derived,
            .use = "carries the wort factor into mixture_index",
            .note = "0.20650 cm3/g is dilute sucrose; weak worts divide a small difference by a small extract, hence the limit of 2 degP"};
        static constexpr input inputs[]{{"original_extract", validated{2, 25}, possible{2, 80}}, {"brix", only{-5, 85}}};

        template <class T>
        static constexpr T formula(T original, T brix) {
            T density = constants::water_20C / 1000.0 * extract::to_gravity.asbc.formula(original);
            T wort = let("wort_refraction", detail::refraction_from_index(refractometer::index.icumsa_1974.formula(brix)) / density);
            return detail::water_refraction + (wort - detail::water_refraction) * 100.0 / original;
        }
    } from_wort;
};
inline constexpr family<&extract_refraction_models::from_wort> extract_refraction{};

}  // namespace wortmath::refractometer
