#pragma once

#include "wortmath/model.hpp"

namespace wortmath::word {
enum class beer_colour { very_pale, straw, yellow, gold, amber, deep_amber, copper, deep_copper, brown, dark_brown, very_dark_brown, black, opaque_black };
enum class bjcp_colour { straw, yellow, gold, amber, deep_amber, copper, deep_copper, brown, dark_brown, very_dark_brown, black, opaque_black };
}  // namespace wortmath::word

template <>
struct wortmath::spelled<wortmath::word::beer_colour> {
    static constexpr const char* names[]{"very pale",   "straw", "yellow",     "gold",            "amber", "deep amber",  "copper",
                                         "deep copper", "brown", "dark brown", "very dark brown", "black", "opaque black"};
};
template <>
struct wortmath::spelled<wortmath::word::bjcp_colour> {
    static constexpr const char* names[]{"Straw", "Yellow",     "Gold",            "Amber", "Deep amber/light copper", "Copper", "Deep copper/light brown",
                                         "Brown", "Dark Brown", "Very Dark Brown", "Black", "Black, opaque"};
};

namespace wortmath::colour {

namespace detail {
inline constexpr double word_starts[]{0.0, 2.0, 3.0, 4.5, 6.0, 9.5, 14.0, 17.0, 18.5, 22.0, 30.0, 35.0, 40.0};  // SRM, in the order of beer_colour
inline constexpr double word_codes[]{0.0, 1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 11.0, 12.0};
inline constexpr struct {
    double low, high;
} bjcp_intervals[]{{2, 3},   {3, 4},   {5, 6},   {6, 9},   {10, 14},       {14, 17},  // SRM, in the order of bjcp_colour
                   {17, 18}, {19, 22}, {22, 30}, {30, 35}, {30, no_limit}, {40, no_limit}};
}  // namespace detail

struct word_models {
    static constexpr const char* question = "Which word describes the colour of a beer?";

    struct half_open : model<struct half_open, name_of<wortmath::word::beer_colour>(unit::srm)> {
        static constexpr facts about{.source = "this project's own rule, made from the colour list of the BJCP 2021 Style Guidelines",
                                     .status = evidence::derived,
                                     .use = "one word for every colour",
                                     .note = "a label for people, never an input to a calculation; shared limits belong to the darker word, gaps are split in "
                                             "the middle, black starts where very dark brown ends; older lists place the words elsewhere"};
        static constexpr input inputs[]{{"srm"}};
        static constexpr bool nan_is_impossible = true;

        template <class T>
        static constexpr T formula(T srm) {
            return stepped(srm, detail::word_starts, detail::word_codes);
        }
    } half_open;

    struct bjcp_2021 : model<struct bjcp_2021, names_of<wortmath::word::bjcp_colour>(unit::srm)> {
        static constexpr facts about{.source = "Beer Judge Certification Program, 2021 Style Guidelines, colour reference",
                                     .status = evidence::primary,
                                     .use = "the words of those guidelines, as printed",
                                     .note = "a label for people, never an input to a calculation; the printed intervals are closed, overlap (two or three words) and "
                                             "leave gaps (no word)"};
        static constexpr input inputs[]{{"srm"}};
        static constexpr bool nan_is_impossible = true;

        template <class T>
        static constexpr T formula(T srm) {
            T words = T(0.0);
            double bit = 1.0;
            for (auto const& interval : detail::bjcp_intervals) {
                words = words + select(srm >= interval.low, select(srm <= interval.high, T(bit), T(0.0)), T(0.0));
                bit *= 2.0;
            }
            return words;
        }
    } bjcp_2021;
};
inline constexpr family<&word_models::half_open> word{};

}  // namespace wortmath::colour
