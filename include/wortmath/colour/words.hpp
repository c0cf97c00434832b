// Words and results that several families of the topic share.
#pragma once

#include "wortmath/model.hpp"

namespace wortmath::word {
enum class illuminant { d65, c };
enum class observer { cie_1931, cie_1964 };
enum class spectrum { de_lange_average, log_linear, two_group };
}  // namespace wortmath::word

template <>
struct wortmath::spelled<wortmath::word::illuminant> {
    static constexpr const char* names[]{"d65", "c"};
};
template <>
struct wortmath::spelled<wortmath::word::observer> {
    static constexpr const char* names[]{"cie_1931", "cie_1964"};
};
template <>
struct wortmath::spelled<wortmath::word::spectrum> {
    static constexpr const char* names[]{"de_lange_average", "log_linear", "two_group"};
};

namespace wortmath::colour {

// Tristimulus values; white has y = 1.
struct xyz {
    unit::ratio x, y, z;
    static constexpr const char* names[]{"x", "y", "z"};
};

struct hex_code {
    char text[8]{'#', '0', '0', '0', '0', '0', '0', '\0'};
};

// A colour on a screen.
struct screen_colour {
    unit::byte_level red, green, blue;
    bool outside_gamut;
    static constexpr const char* names[]{"red", "green", "blue", "outside_gamut"};

    // "#rrggbb"
    constexpr hex_code hex() const noexcept {
        hex_code h;
        double const channels[]{red.value, green.value, blue.value};
        for (int i = 0; i < 3; ++i) {
            int const v = static_cast<int>(channels[i]);
            h.text[1 + 2 * i] = "0123456789abcdef"[v / 16];
            h.text[2 + 2 * i] = "0123456789abcdef"[v % 16];
        }
        return h;
    }
};

}  // namespace wortmath::colour
