#pragma once

#include "wortmath/colour/observer.hpp"
#include "wortmath/colour/spectrum.hpp"
#include "wortmath/colour/transmittance.hpp"
#include "wortmath/colour/tristimulus_sum.hpp"

namespace wortmath::colour {

// A spectrum of the caller's own: absorbance at a wavelength relative to that at 430 nm.
template <class F>
concept relative_spectrum = requires(const F f) { unit::ratio(f(unit::nanometres(430.0))); };

namespace detail {
struct rows {
    double of[cie_rows];
};
inline const rows average_beer_rows = [] {
    rows r{};
    for (std::size_t i = 0; i < cie_rows; ++i) r.of[i] = spectrum.de_lange_average.formula(cie_wavelengths[i]);
    return r;
}();
inline const observer_table observer_wyman_1931 = [] {
    observer_table o{};
    for (std::size_t i = 0; i < cie_rows; ++i) {
        auto const v = observer.wyman_1931.formula(cie_wavelengths[i]);
        o.xbar[i] = v[0], o.ybar[i] = v[1], o.zbar[i] = v[2];
    }
    return o;
}();

// Seen through beer whose relative absorbance in a row is `relative(row)`.
template <int Step, class T, class Relative>
constexpr several<T, 3> through_beer(T srm, T path, const double (&illuminant)[cie_rows], const observer_table& observer, Relative relative) {
    return tristimulus_sum<Step, T>(illuminant, observer, [&](std::size_t i) -> T { return transmittance.beer_lambert.formula(srm, path, T(relative(i))); });
}
template <int Step, class T>
constexpr several<T, 3> through_beer(T srm, T path, word::illuminant i, word::observer o, word::spectrum s) {
    if (s != word::spectrum::de_lange_average) return {{T(undefined), T(undefined), T(undefined)}};
    return through_beer<Step>(srm, path, table_of(i), table_of(o), [](std::size_t row) { return average_beer_rows.of[row]; });
}
template <int Step, class T, relative_spectrum F>
constexpr several<T, 3> through_beer(T srm, T path, word::illuminant i, word::observer o, const F& spectrum) {
    return through_beer<Step>(srm, path, table_of(i), table_of(o), [&](std::size_t row) { return unit::ratio(spectrum(unit::nanometres(cie_wavelengths[row]))).value; });
}

inline constexpr const char* spectrum_needed =
    "the spectra log_linear and two_group need their parameter (a Linner index, a share of roast malt): give it with the name, or give a function of "
    "the wavelength that has a number for every row of the table";
}  // namespace detail

struct tristimulus_models {
    static constexpr const char* question = "What are the tristimulus values of a beer seen through a glass or a cell?";

    struct table_5nm : model<struct table_5nm, xyz(unit::srm, unit::centimetres, word::illuminant, word::observer, word::spectrum)> {
        static constexpr facts about{.source = "CIE 15:2004 and ASTM E308-22: plain sum over the tables every 5 nm from 380 to 780 nm",
                                     .status = evidence::secondary,
                                     .use = "the usual case",
                                     .accuracy = "CIEDE2000 0.002 to a sum every 1 nm; within 6e-4 of an open colour-management engine with tables of its own",
                                     .note = "an average beer in bright condition, not this beer"};
        static constexpr input inputs[]{{"srm", validated{0, 60}},
                                        {"path_length", validated{0, 10}, otherwise{1.0}},
                                        {"illuminant", otherwise{word::illuminant::d65}},
                                        {"observer", otherwise{word::observer::cie_1931}},
                                        {"spectrum", otherwise{word::spectrum::de_lange_average}}};
        static constexpr const char* refusal = detail::spectrum_needed;

        template <class T, class Spectrum>
        static constexpr several<T, 3> formula(T srm, T path, word::illuminant i, word::observer o, const Spectrum& s) {
            return detail::through_beer<5>(srm, path, i, o, s);
        }

        using model::operator();
        template <relative_spectrum Spectrum>
        xyz operator()(unit::srm srm, unit::centimetres path, word::illuminant i, word::observer o, const Spectrum& s) const {
            return (*this)(policy::raise, srm, path, i, o, s);
        }
        template <relative_spectrum Spectrum>
        xyz operator()(policy how, unit::srm srm, unit::centimetres path, word::illuminant i, word::observer o, const Spectrum& s) const {
            return wortmath::detail::answer<table_5nm, tristimulus_models>(how, srm.value, path.value, i, o, s);
        }
    } table_5nm;

    struct table_10nm : model<struct table_10nm, xyz(unit::srm, unit::centimetres, word::illuminant, word::observer, word::spectrum)> {
        static constexpr facts about{.source = "CIE 15:2004 and ASTM E308-22: plain sum over the tables every 10 nm from 380 to 780 nm",
                                     .status = evidence::secondary,
                                     .use = "spectra measured every 10 nm",
                                     .accuracy = "CIEDE2000 0.007 (CIE 1931) and 0.009 (CIE 1964) to a sum every 1 nm, at most 1 of 255 in a channel",
                                     .note = "a sum every 20 nm (0.23) or one cut to 400 to 700 nm (0.17) is not good enough"};
        static constexpr input inputs[]{{"srm", validated{0, 60}},
                                        {"path_length", validated{0, 10}, otherwise{1.0}},
                                        {"illuminant", otherwise{word::illuminant::d65}},
                                        {"observer", otherwise{word::observer::cie_1931}},
                                        {"spectrum", otherwise{word::spectrum::de_lange_average}}};
        static constexpr const char* refusal = detail::spectrum_needed;

        template <class T, class Spectrum>
        static constexpr several<T, 3> formula(T srm, T path, word::illuminant i, word::observer o, const Spectrum& s) {
            return detail::through_beer<10>(srm, path, i, o, s);
        }

        using model::operator();
        template <relative_spectrum Spectrum>
        xyz operator()(unit::srm srm, unit::centimetres path, word::illuminant i, word::observer o, const Spectrum& s) const {
            return (*this)(policy::raise, srm, path, i, o, s);
        }
        template <relative_spectrum Spectrum>
        xyz operator()(policy how, unit::srm srm, unit::centimetres path, word::illuminant i, word::observer o, const Spectrum& s) const {
            return wortmath::detail::answer<table_10nm, tristimulus_models>(how, srm.value, path.value, i, o, s);
        }
    } table_10nm;

    // The sum every 5 nm with a fitted observer in place of the table.
    struct wyman : model<struct wyman, xyz(unit::srm, unit::centimetres, word::illuminant)> {
        static constexpr facts about{.source = "CIE 15:2004 with the fit of C. Wyman, P.-P. Sloan, P. Shirley, J. Computer Graphics Techniques 2(2):1-11, 2013, "
                                               "eq. 4",
                                     .status = evidence::secondary,
                                     .use = "where the observer's table is not at hand",
                                     .accuracy = "against the table up to CIEDE2000 0.40 (1 cm) and 0.96 (5 cm) at 40 SRM, up to 5 of 255 in a channel"};
        static constexpr input inputs[]{{"srm", validated{0, 60}}, {"path_length", validated{0, 10}, otherwise{1.0}}, {"illuminant", otherwise{word::illuminant::d65}}};

        template <class T>
        static constexpr several<T, 3> formula(T srm, T path, word::illuminant i) {
            return detail::through_beer<5>(srm, path, detail::table_of(i), detail::observer_wyman_1931,
                                           [](std::size_t row) { return detail::average_beer_rows.of[row]; });
        }
    } wyman;
};
inline constexpr family<&tristimulus_models::table_5nm> tristimulus{};

}  // namespace wortmath::colour
