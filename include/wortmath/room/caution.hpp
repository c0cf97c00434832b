#pragma once

#include "wortmath/model.hpp"

namespace wortmath::room {

struct caution_models {
    static constexpr const char* question = "Which level of caution does the carbon dioxide in a room call for?";

    struct project_rule : model<struct project_rule, unit::level(unit::parts_per_million)> {
        static constexpr facts about{
            .source = "this project's own rule, from the lowest published limits: 5 000 ppm for 8 h (OSHA, NIOSH, ACGIH, EH40, Directive 2006/15/EC) and 15 000 "
                      "ppm for 15 min (EH40)",
            .status = evidence::derived,
            .use = "the mean of a room",
            .note = "0: no rule of this list was met; 1: above 5 000 ppm; 2: above 15 000 ppm. Many pages still print OSHA 10 000 and 30 000, a rule of 1989 that "
                    "was struck down; a European table misprints 274 000 and 540 000 mg/m3 for 27 400 and 54 000",
            .danger = "no licence to enter: pits, tanks and corners can hold far more. What is not a number, or negative, is "
                      "level 2. Never enter to rescue someone: call the emergency service"};
        static constexpr double answer_to_anything_else = 2.0;
        static constexpr input inputs[]{{"co2_concentration"}};

        template <class T>
        static constexpr T formula(T ppm) {
            return select(ppm <= 15000.0, select(ppm >= 0.0, select(ppm > 5000.0, T(1.0), T(0.0)), T(2.0)), T(2.0));
        }
    } project_rule;
};
inline constexpr family<&caution_models::project_rule> caution{};

}  // namespace wortmath::room
