#pragma once

#include "wortmath/constants.hpp"
#include "wortmath/model.hpp"

namespace wortmath::bitterness {

namespace detail {

// Where the rates were measured, and how far anybody may carry them. Every family built on them asks the same.
inline constexpr validated measured_rates{90, 130};
inline constexpr possible carried_rates{0, 140};

}  // namespace detail

struct isomerisation_rate_models {
    static constexpr const char* question = "How fast do alpha acids turn into iso-alpha acids, and how fast are these lost again?";

    struct rates {
        unit::per_minute k1, k2;
        static constexpr const char* names[]{"k1", "k2"};
    };

    // k1: alpha acids to iso-alpha acids; k2: iso-alpha acids to what comes after them.
    struct malowicki_shellhammer : model<struct malowicki_shellhammer, rates(unit::celsius)> {
        static constexpr facts about{
            .source = "M. G. Malowicki, T. H. Shellhammer, J. Agric. Food Chem. 53 (2005) 4434-4439, abstract",
            .status = evidence::primary,
            .use = "iso-alpha acids in hot wort at any temperature; never as bitterness units",
            .accuracy = "factors of two figures: 0.6 % in k1, 1.2 % in k2; the printed activation energies within 0.04 kJ/mol",
            .note =
                "buffer of pH 5.2, 90 to 130 degC; the abstract gives the factors no unit: per minute follows from their size and from "
                "its remark on half-lives; the loss, not the formation, is said to depend on pH and gravity"};
        static constexpr input inputs[]{{"temperature", detail::measured_rates, detail::carried_rates}};

        template <class T>
        static constexpr several<T, 2> formula(T t) {
            T absolute = t + constants::zero_celsius;
            return {{7.9e11 * exp(-11858.0 / absolute), 4.1e12 * exp(-12994.0 / absolute)}};
        }
    } malowicki_shellhammer;
};
inline constexpr family<&isomerisation_rate_models::malowicki_shellhammer> isomerisation_rate{};

}  // namespace wortmath::bitterness
