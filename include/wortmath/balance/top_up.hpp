#pragma once

#include "wortmath/balance/liquid.hpp"

namespace wortmath::balance {

struct top_up_models {
    static constexpr const char* question = "How strong is an amount of extract made up to a volume with water?";

    // Made up to the mark: the water fills what the extract leaves, so its amount need not be known.
    struct volume : model<struct volume, unit::plato(unit::grams, unit::litres, unit::celsius)> {
        static constexpr facts about{
            .source = "this project's own derivation: exact balance of total mass and mass of extract; densities of extract.density.icumsa",
            .status = evidence::derived,
            .use = "extract or sugar dissolved and topped up to a known volume",
            .accuracy = "exact for sucrose; the solution itself to rounding",
            .note = "1 lb made up to 1 US gal is 11.475 degP; added to 1 US gal of water it is 10.718 degP: that is balance.blend"};
        static constexpr input inputs[]{{"extract_mass"}, {"volume", only{above(0), no_limit}}, {"temperature", validated{0, 100}, possible{-5, 105}}};
        static constexpr const char* refusal = "so much extract does not fit into this volume: the wort would be stronger than 90 degP";

        template <class T>
        static constexpr T formula(T e, T V, T t) {
            wortmath::extract::detail::sucrose<T> const s(t);
            T c = let("c", e / V);  // g/L
            T w = newton<3>(
                c / (s.water + 0.385 * c), [=](T x) { return x * s.density(x) - c; }, [=](T x) { return s.density(x) + x * s.slope(x); });
            return select(c <= 0.90 * s.density(T(0.90)), 100.0 * w, undefined);
        }
    } volume;
};
inline constexpr family<&top_up_models::volume> top_up{};

}  // namespace wortmath::balance
