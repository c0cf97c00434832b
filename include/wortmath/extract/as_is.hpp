#pragma once

#include "wortmath/model.hpp"

namespace wortmath::extract {

struct as_is_models {
    static constexpr const char* question = "What is a dry-basis extract yield of malt as it is weighed?";

    struct exact : model<struct exact, unit::fraction(unit::fraction, unit::fraction)> {
        static constexpr facts about{.source = "definition of the dry basis",
                                     .status = evidence::derived,
                                     .use = "always",
                                     .accuracy = "exact"};
        static constexpr input inputs[]{{"dry_basis_yield", only{0, 1}}, {"moisture", only{0, below(1)}}};

        template <class T>
        static constexpr T formula(T e, T moisture) {
            return e * (1.0 - moisture);
        }
    } exact;

    struct noonan_book : model<struct noonan_book, unit::fraction(unit::fraction, unit::fraction)> {
        static constexpr facts about{.source = "G. Noonan, New Brewing Lager Beer, p. 13",
                                     .status = evidence::secondary,
                                     .use = "to repeat old recipes only",
                                     .accuracy = "0.7672 for 0.80 at 4 % moisture, where 0.7680 is exact"};
        static constexpr input inputs[]{{"dry_basis_yield", only{0, 1}}, {"moisture", only{0, below(1)}}};

        template <class T>
        static constexpr T formula(T e, T moisture) {
            return e / (1.0 + moisture) - 0.002;
        }
    } noonan_book;

    struct noonan_article : model<struct noonan_article, unit::fraction(unit::fraction, unit::fraction)> {
        static constexpr facts about{.source = "G. Noonan, Brewing Techniques (quoted)",
                                     .status = evidence::secondary,
                                     .use = "to repeat old recipes only",
                                     .accuracy = "0.7580 for 0.80 at 4 % moisture, where 0.7680 is exact"};
        static constexpr input inputs[]{{"dry_basis_yield", only{0, 1}}, {"moisture", only{0, below(1)}}};

        template <class T>
        static constexpr T formula(T e, T moisture) {
            return e - moisture - 0.002;
        }
    } noonan_article;
};
inline constexpr family<&as_is_models::exact> as_is{};

}  // namespace wortmath::extract
