#pragma once

#include "wortmath/bitterness/kettle_cooling.hpp"
#include "wortmath/bitterness/kettle_cooling_time.hpp"
#include "wortmath/bitterness/relative_utilisation.hpp"
#include "wortmath/bitterness/utilisation.hpp"

namespace wortmath::bitterness {

namespace detail {

// Half the positive nodes and weights of the Gauss-Legendre rule of 48 points.
inline constexpr double gauss_nodes[]{0.01619008548143468, 0.04850234960473135, 0.08061117803444585, 0.11238189519734453, 0.14368124367772778,
                                      0.17437794314608038, 0.20434324099535836, 0.2334514523754792,  0.2615804873611165,  0.28861236304198634,
                                      0.3144336983882568,  0.33893618981633195, 0.3620170654619073,  0.3835795162578702,  0.4035331020147213,
                                      0.42179413081219674, 0.4382860101371239,  0.4529395683577848,  0.46569334535327717, 0.47649385158021546,
                                      0.48529579627312364, 0.4920622918614134,  0.4967650861331754,  0.49938550362621303};
inline constexpr double gauss_weights[]{0.03236884840634196,  0.032233082217975044, 0.03196211929232409,   0.03155709614312701,  0.031019711579946332,
                                        0.03035221958294694,  0.029557419849197818, 0.028638646050201607,  0.027599751849992082, 0.026445094742596834,
                                        0.025179517776927236, 0.02380832924624524,  0.02233728042834714,   0.020772541471732374, 0.019120675532915354,
                                        0.01738861128238522,  0.015583613916399045, 0.013713254854178474,  0.01178538041966219,  0.009808080228677764,
                                        0.007789657861471924, 0.00573861728961727,  0.0036637769506381312, 0.0015766730261529192};

// The integral of f from 0 to `length`, for an f that decays at first within `scale` and ever more slowly after: in the
// variable ln(1 + s/scale) one rule of 48 points serves lengths from seconds to days.
template <class T, class F>
constexpr T integral_of_decay(T length, T scale, F f) {
    T end = log1p(length / scale), sum = T(0.0);
    for (int i = 0; i < 24; ++i) {
        T early = exp(end * (0.5 - gauss_nodes[i])), late = exp(end * (0.5 + gauss_nodes[i]));
        sum = sum + gauss_weights[i] * (early * f(scale * (early - 1.0)) + late * f(scale * (late - 1.0)));
    }
    return end * scale * sum;
}

// 9773/ln 2.39e11 K, where the printed relative utilisation passes 1.
inline constexpr double boils_as_fast_above = 373.0191199665119;

}  // namespace detail

struct post_boil_models {
    static constexpr const char* question = "What is the utilisation of hops that are boiled for a time, or not at all, and then left in the hot wort?";

    struct hosom : model<struct hosom, unit::bitterness_yield(unit::gravity_20_20, unit::minutes, unit::minutes, unit::square_centimetres,
                                                              unit::square_centimetres, unit::litres)> {
        static constexpr facts about{
            .source =
                "G. Tinseth, Hop Utilization Numbers, with J.-P. Hosom's articles on utilisation below boiling and on the temperature after "
                "flameout; the combination recalled",
            .status = evidence::memory,
            .use = "a kettle of homebrew size left open to cool by itself",
            .accuracy = "the integral to 1e-12; field figures for hops added after the boil range from 10 to 30 %",
            .note = "assumes a boil at 100 degC: no altitude factor on top of it, and none in it"};
        static constexpr input inputs[]{{"boil_gravity", validated{1.030, 1.130}, detail::wort_gravity},
                                        {"boil_minutes", validated{0, 120}, detail::amount},
                                        {"stand_minutes", detail::amount},
                                        {"surface_area", detail::amount},
                                        {"opening_area", detail::amount},
                                        {"volume", detail::homebrew_volume, detail::some}};
        static constexpr const char* holds_when =
            "the wort would be below 61.85 degC before the stand ends, where the cooling curve has no data any more; "
            "post_boil.constant_temperature takes a temperature of your own";

        template <class T>
        static constexpr T formula(T G, T t0, T ts, T surface_area, T opening_area, T volume) {
            // Before this minute the wort isomerises as if it still boiled.
            T hot = let("hot", kettle_cooling_time.hosom.formula(T(detail::boils_as_fast_above - constants::zero_celsius), surface_area, opening_area, volume));
            T b = detail::cooling_rate(surface_area, opening_area, volume);
            // exp(-0.04 s) leaves less than 1e-15 beyond 900 minutes.
            T length = least(T(900.0), most(T(0.0), ts - hot));
            T cooling = detail::integral_of_decay(length, 1.0 / (0.04 + 4.0 * b), [=](T s) -> T {
                T temperature = kettle_cooling.hosom.formula(hot + s, surface_area, opening_area, volume);
                return exp(-0.04 * (hot + s)) * relative_utilisation.hosom_unclamped.formula(temperature);
            });
            T bigness = let("bigness", gravity_adjustment.tinseth.formula(G));
            T stood = let("stood", -expm1(-0.04 * least(hot, ts)) + 0.04 * cooling);
            return bigness / 4.15 * (-expm1(-0.04 * t0) + exp(-0.04 * t0) * stood);
        }
        template <class T>
        static constexpr bool holds(T, T, T, T ts, T surface_area, T opening_area, T volume) {
            return !(kettle_cooling.hosom.formula(ts, surface_area, opening_area, volume) < detail::cooling_fit_ends);
        }
    } hosom;

    struct constant_temperature : model<struct constant_temperature, unit::bitterness_yield(unit::gravity_20_20, unit::minutes, unit::minutes, unit::celsius)> {
        static constexpr facts about{
            .source = "G. Tinseth, Hop Utilization Numbers, with J.-P. Hosom's article on utilisation below boiling; the combination recalled",
            .status = evidence::memory,
            .use = "a stand held at one temperature",
            .accuracy = "field figures for hops added after the boil range from 10 to 30 %",
            .note = "assumes a boil at 100 degC: no altitude factor on top of it, and none in it"};
        static constexpr input inputs[]{{"boil_gravity", validated{1.030, 1.130}, detail::wort_gravity},
                                        {"boil_minutes", validated{0, 120}, detail::amount},
                                        {"stand_minutes", detail::amount},
                                        {"temperature", validated{63, 101}}};

        template <class T>
        static constexpr T formula(T G, T t0, T ts, T temperature) {
            T bigness = let("bigness", gravity_adjustment.tinseth.formula(G));
            T stood = let("stood", -expm1(-0.04 * ts) * relative_utilisation.hosom.formula(temperature));
            return bigness / 4.15 * (-expm1(-0.04 * t0) + exp(-0.04 * t0) * stood);
        }
    } constant_temperature;
};
inline constexpr family<&post_boil_models::hosom> post_boil{};

}  // namespace wortmath::bitterness
