#pragma once

#include "wortmath/colour/cie_tables.hpp"
#include "wortmath/model.hpp"

namespace wortmath::colour {

namespace detail {
// The row of a wavelength; between the rows there is no value.
template <class T>
constexpr several<T, 3> tabulated(const observer_table& o, T wavelength) {
    T beyond = wavelength - 5.0 * floor(wavelength / 5.0);
    auto const entry = [&](const double(&column)[cie_rows]) -> T { return select(beyond <= 0.0, stepped(wavelength, cie_wavelengths, column), T(undefined)); };
    return {{entry(o.xbar), entry(o.ybar), entry(o.zbar)}};
}

// A bell with one slope below its peak and another above.
template <class T>
constexpr T lobe(T w, double peak, double slope_below, double slope_above) {
    T t = (w - peak) * select(w < peak, T(slope_below), T(slope_above));
    return exp(-square(t) / 2.0);
}
}  // namespace detail

struct observer_models {
    static constexpr const char* question = "How strongly does light of one wavelength act on the three colour-matching functions of an observer?";

    struct responses {
        unit::ratio xbar, ybar, zbar;
        static constexpr const char* names[]{"xbar", "ybar", "zbar"};
    };

    // The eye looking at a field of 2 degrees.
    struct cie_1931 : model<struct cie_1931, responses(unit::nanometres)> {
        static constexpr facts about{.source = "CIE 15:2004; ISO/CIE 11664-1, values as distributed in colour-science (BSD-3-Clause)",
                                     .status = evidence::secondary,
                                     .use = "screens",
                                     .accuracy = "the printed tables have 6 decimals, the further digits come from the 1 nm table",
                                     .note = "an open renderer prints ybar(547) as 0.9874812, right is 0.9874182; no effect at 5 nm"};
        static constexpr input inputs[]{{"wavelength", only{380, 780}}};
        static constexpr const char* refusal = "the table has values at 380, 385, 390 ... 780 nm only and nothing is interpolated; take one of these wavelengths";

        template <class T>
        static constexpr several<T, 3> formula(T wavelength) {
            return detail::tabulated(detail::observer_cie_1931, wavelength);
        }
    } cie_1931;

    // The eye looking at a field of 10 degrees.
    struct cie_1964 : model<struct cie_1964, responses(unit::nanometres)> {
        static constexpr facts about{.source = "CIE 15:2004; ISO/CIE 11664-1, values as distributed in colour-science (BSD-3-Clause)",
                                     .status = evidence::secondary,
                                     .use = "the tristimulus method ASBC Beer-10 C",
                                     .accuracy = "the printed tables have 6 decimals, the further digits come from the 1 nm table"};
        static constexpr input inputs[]{{"wavelength", only{380, 780}}};
        static constexpr const char* refusal = "the table has values at 380, 385, 390 ... 780 nm only and nothing is interpolated; take one of these wavelengths";

        template <class T>
        static constexpr several<T, 3> formula(T wavelength) {
            return detail::tabulated(detail::observer_cie_1964, wavelength);
        }
    } cie_1964;

    // A fit to the observer of 1931.
    struct wyman_1931 : model<struct wyman_1931, responses(unit::nanometres)> {
        static constexpr facts about{.source = "C. Wyman, P.-P. Sloan, P. Shirley, J. Computer Graphics Techniques 2(2):1-11, 2013, eq. 4",
                                     .status = evidence::secondary,
                                     .use = "where the table is not at hand, and between its rows",
                                     .accuracy = "largest error 0.0140, 0.0080, 0.0222 between 380 and 780 nm; on beer up to CIEDE2000 0.40 (1 cm) and 0.96 (5 cm) at 40 SRM",
                                     .note = "copies swap the slopes 0.0845 and 0.0278"};
        static constexpr input inputs[]{{"wavelength", validated{380, 780}}};

        template <class T>
        static constexpr several<T, 3> formula(T w) {
            using detail::lobe;
            return {{0.362 * lobe(w, 442.0, 0.0624, 0.0374) + 1.056 * lobe(w, 599.8, 0.0264, 0.0323) - 0.065 * lobe(w, 501.1, 0.0490, 0.0382),
                     0.821 * lobe(w, 568.8, 0.0213, 0.0247) + 0.286 * lobe(w, 530.9, 0.0613, 0.0322),
                     1.217 * lobe(w, 437.0, 0.0845, 0.0278) + 0.681 * lobe(w, 459.0, 0.0385, 0.0725)}};
        }
    } wyman_1931;

    // A fit to the observer of 1964.
    struct wyman_1964 : model<struct wyman_1964, responses(unit::nanometres)> {
        static constexpr facts about{.source = "C. Wyman, P.-P. Sloan, P. Shirley, J. Computer Graphics Techniques 2(2):1-11, 2013",
                                     .status = evidence::secondary,
                                     .use = "where the table is not at hand, and between its rows",
                                     .accuracy = "largest error 0.047, 0.027, 0.062 between 380 and 780 nm",
                                     .note = "copies print 138 for 1338, and label this fit with the year 1931"};
        static constexpr input inputs[]{{"wavelength", only{above(265.8), below(1338)}}};

        template <class T>
        static constexpr several<T, 3> formula(T w) {
            return {{0.398 * exp(-1250.0 * square(log((w + 570.1) / 1014.0))) + 1.132 * exp(-234.0 * square(log((1338.0 - w) / 743.5))),
                     1.011 * exp(-square((w - 556.1) / 46.14) / 2.0),
                     2.060 * exp(-32.0 * square(log((w - 265.8) / 180.4)))}};
        }
    } wyman_1964;
};
inline constexpr family<&observer_models::cie_1931> observer{};

}  // namespace wortmath::colour
