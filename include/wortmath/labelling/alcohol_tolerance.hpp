#pragma once

#include "wortmath/model.hpp"

namespace wortmath::labelling {

struct alcohol_tolerance_models {
    static constexpr const char* question = "By how much may the stated strength differ from the actual one, plus or minus?";

    // Half a per cent up to and including 5.5 % vol, one per cent above.
    struct eu_1169_beer : model<struct eu_1169_beer, unit::alcohol_by_volume(unit::alcohol_by_volume)> {
        static constexpr facts about{.source = "Regulation (EU) 1169/2011, Annex XII",
                                     .status = evidence::primary,
                                     .use = "beer above 1.2 % vol on a label in the European Union",
                                     .accuracy = "exact",
                                     .note =
                                         "strength at 20 degC, at most one decimal on the label; the uncertainty of the method comes on top. Same annex: "
                                         "cider, perry, fruit wine and mead 1.0; drinks with macerated fruit or plants 1.5; other drinks above 1.2 % vol 0.3",
                                     .danger =
                                         "the annex gives no tolerance at or below 1.2 % vol, so none is computed there: never apply 0.5 % vol to a claim that "
                                         "a beer is free of alcohol"};
        static constexpr input inputs[]{{"alcohol_by_volume"}};
        static constexpr const char* refusal = "the annex gives a tolerance only above 1.2 % vol: a weaker beer, or one called free of alcohol, has none";

        template <class T>
        static constexpr T formula(T alcohol) {
            return select(alcohol > 1.2, select(alcohol <= 5.5, T(0.5), T(1.0)), undefined);
        }
    } eu_1169_beer;

    struct us_27cfr7 : model<struct us_27cfr7, unit::alcohol_by_volume(unit::alcohol_by_volume)> {
        static constexpr facts about{
            .source = "27 CFR 7.65",
            .status = evidence::secondary,
            .use = "malt beverages of 0.5 % vol or more on a label in the United States",
            .accuracy = "exact",
            .note = "0.3 % vol from a law firm's note, the rest from memory. A beverage labelled 0.5 % vol or more may not fall below 0.5 % vol",
            .danger = "a claim of no alcohol has no tolerance upward, so none is computed below 0.5 % vol"};
        static constexpr input inputs[]{{"alcohol_by_volume"}};
        static constexpr const char* refusal = "the rule gives a tolerance only from 0.5 % vol: a claim of no alcohol has none upward";

        template <class T>
        static constexpr T formula(T alcohol) {
            return select(alcohol >= 0.5, T(0.3), undefined);
        }
    } us_27cfr7;
};
// The law of the place decides: there is no default.
inline constexpr family_without_default<alcohol_tolerance_models> alcohol_tolerance{};

}  // namespace wortmath::labelling
