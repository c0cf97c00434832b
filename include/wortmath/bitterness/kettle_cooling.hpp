#pragma once

#include "wortmath/bitterness/bounds.hpp"
#include "wortmath/constants.hpp"

namespace wortmath::bitterness {

namespace detail {

// Kelvins; the fit ends where the wort is no warmer than 335 K.
inline constexpr double cooling_rise = 53.70, cooling_floor = 319.55, cooling_fit_ends = 335.0 - constants::zero_celsius;
inline constexpr validated homebrew_volume{above(0), 100};

// Per minute.
template <class T>
constexpr T cooling_rate(T surface_area, T opening_area, T volume) {
    T effective = let("effective", sqrt(surface_area * opening_area));
    return let("b", 0.0002925 * effective / volume + 0.00538);
}

}  // namespace detail

struct kettle_cooling_models {
    static constexpr const char* question = "How warm is the wort some minutes after the heat is off?";

    struct hosom : model<struct hosom, unit::celsius(unit::minutes, unit::square_centimetres, unit::square_centimetres, unit::litres)> {
        static constexpr facts about{
            .source = "J.-P. Hosom, Predicting Wort Temperature After Flameout, author's own article",
            .status = evidence::primary,
            .use = "an open homebrew kettle without a chiller",
            .accuracy = "none stated; starts at 100.10 degC; the limit of 100 L is ours",
            .note =
                "319.55 K is a parameter of the fit, not the surroundings: steam governs, not the room; at altitude start the curve at "
                "kettle_cooling_time of the boiling temperature"};
        static constexpr input inputs[]{
            {"minutes", detail::amount}, {"surface_area", detail::amount}, {"opening_area", detail::amount}, {"volume", detail::homebrew_volume, detail::some}};
        static constexpr const char* holds_when =
            "the wort would be below 61.85 degC by then, where the cooling curve has no data any more; kettle_cooling.newton takes a "
            "measured time constant";

        template <class T>
        static constexpr T formula(T minutes, T surface_area, T opening_area, T volume) {
            T b = detail::cooling_rate(surface_area, opening_area, volume);
            return detail::cooling_rise * exp(-b * minutes) + detail::cooling_floor - constants::zero_celsius;
        }
        template <class T>
        static constexpr bool holds(T result, T, T, T, T) {
            return !(result < detail::cooling_fit_ends);
        }
    } hosom;

    struct newton : model<struct newton, unit::celsius(unit::minutes, unit::celsius, unit::celsius, unit::minutes)> {
        static constexpr facts about{
            .source = "Newton's law of cooling, one lump of wort in steady surroundings",
            .status = evidence::derived,
            .use = "any vessel whose time constant has been measured: the time in which the difference to the surroundings falls to 37 %",
            .accuracy = "that of the time constant",
            .note = "for wort that is stirred or mixes by itself"};
        static constexpr input inputs[]{
            {"minutes", detail::amount}, {"start_temperature"}, {"ambient_temperature", possible{-60, 130}}, {"time_constant_minutes", detail::some}};

        template <class T>
        static constexpr T formula(T minutes, T start_temperature, T ambient_temperature, T time_constant_minutes) {
            return ambient_temperature + (start_temperature - ambient_temperature) * exp(-minutes / time_constant_minutes);
        }
    } newton;
};
inline constexpr family<&kettle_cooling_models::hosom> kettle_cooling{};

}  // namespace wortmath::bitterness
