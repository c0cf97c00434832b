#pragma once

#include "wortmath/model.hpp"

namespace wortmath::thermal {

struct mix_models {
    static constexpr const char* question = "What is the temperature of several streams mixed together?";

    // Needs no heat capacity: the enthalpy of each stream follows from its extract and temperature.
    struct wort_enthalpy : model<struct wort_enthalpy, unit::celsius(list<unit::grams>, list<unit::plato>, list<unit::celsius>)> {
        static constexpr facts about{
            .source = "first law with the enthalpy of sucrose solution, the integral of Kadlec's specific heat at a purity of 100 %",
            .status = evidence::derived,
            .use = "topping up and blending, whenever extract and temperature of the streams are known",
            .accuracy = "two independent published correlations of the specific heat agree within 0.001 kJ/(kg K)",
            .note =
                "sucrose stands in for wort; the heat of dilution and the variation of water's own specific heat (0.7 %) are neglected. "
                "Topping up does not chill to pitching temperature: 11 640 g of wort of 25.7 degP at 100 degC and 8480 g of water at "
                "5 degC end at 57.0 degC"};
        static constexpr input inputs[]{{"masses"}, {"extracts", validated{0, 60}, possible{0, 100}}, {"temperatures", validated{0, 100}}};
        static constexpr const char* refusal = "there is nothing to mix: give at least one stream with a mass above 0 g";

        template <class T>
        static constexpr T formula(series<T> m, series<T> x, series<T> t) {
            T mass = T(0.0), extract = T(0.0), heat = T(0.0);
            for (std::size_t i = 0; i < m.size(); ++i) {
                mass = mass + m[i];
                extract = extract + m[i] * x[i];
                heat = heat + m[i] * ((4.1868 - 0.0251 * x[i]) * t[i] + 3.75e-5 * x[i] * square(t[i]));
            }
            T X = let("X", extract / mass);
            T H = let("H", heat / mass);
            T a = let("a", 4.1868 - 0.0251 * X);
            T b = let("b", 3.75e-5 * X);
            // This form of the root does not cancel and holds for water, where b is 0.
            return select(mass > 0.0, 2.0 * H / (a + sqrt(square(a) + 4.0 * b * H)), undefined);
        }
    } wort_enthalpy;

    // The kitchen form, for streams whose specific heats are known.
    struct constant_heat : model<struct constant_heat, unit::celsius(list<unit::grams>, list<unit::kilojoules_per_kilogram_kelvin>, list<unit::celsius>)> {
        static constexpr facts about{.source = "first law with one specific heat for each stream",
                                     .status = evidence::derived,
                                     .use = "streams whose specific heat is known but not their extract",
                                     .accuracy =
                                         "with specific heats of 20 degC it lies below wort_enthalpy by up to 0.6 K (hot wort of 20 degP topped up "
                                         "with cold water), 0.9 K at 30 degP, 2.2 K at 60 degP"};
        static constexpr input inputs[]{
            {"masses"}, {"specific_heats", validated{3.0, 4.25}, possible{above(0), no_limit}}, {"temperatures", validated{0, 100}}};
        static constexpr const char* refusal = "there is nothing to mix: give at least one stream with a mass above 0 g";

        template <class T>
        static constexpr T formula(series<T> m, series<T> c, series<T> t) {
            T capacity = T(0.0), heat = T(0.0);
            for (std::size_t i = 0; i < m.size(); ++i) {
                capacity = capacity + m[i] * c[i];
                heat = heat + m[i] * c[i] * t[i];
            }
            return select(capacity > 0.0, heat / capacity, undefined);
        }
    } constant_heat;
};
inline constexpr family<&mix_models::wort_enthalpy> mix{};

}  // namespace wortmath::thermal
