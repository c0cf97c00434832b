#pragma once

#include "wortmath/extract/density.hpp"
#include "wortmath/model.hpp"

namespace wortmath::extract {

struct specific_volume_models {
    static constexpr const char* question = "How much room does a kilogram of dissolved extract take in wort?";

    struct icumsa : model<struct icumsa, unit::litres_per_kilogram(unit::fraction, unit::celsius)> {
        static constexpr facts about{.source = "extract.density.icumsa and its water",
                                     .status = evidence::derived,
                                     .use = "how far an addition of sugar or malt extract raises the level",
                                     .accuracy = "as extract.density.icumsa",
                                     .note = "1000 (1/rho - (1 - w)/rho_w)/w with w divided out, so that it stays exact in thin wort. One "
                                             "kg of 97 % dried extract raises the volume by about 0.63 L"};
        static constexpr input inputs[]{{"mass_fraction", validated{above(0), 0.70}, possible{above(0), 0.90}},
                                        {"temperature", validated{0, 100}, possible{-5, 105}}};

        template <class T>
        static constexpr T formula(T w, T t) {
            detail::sucrose<T> const s(t);
            T rho = s.density(w);
            return 1000.0 * (rho - s.excess(w)) / (rho * s.water);
        }
    } icumsa;
};
inline constexpr family<&specific_volume_models::icumsa> specific_volume{};

}  // namespace wortmath::extract
