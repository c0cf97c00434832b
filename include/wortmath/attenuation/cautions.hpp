// What has to stand beside a strength or a final gravity that was worked out and not measured.
#pragma once

namespace wortmath::attenuation::detail {

inline constexpr const char* estimated_strength =
    "an estimate: real brews scatter about it by 0.14 % vol (one standard deviation), and priming sugar adds about 0.26 % vol for each volume of CO2, so the "
    "beer may be stronger than the figure. Not to be relied on for a label, duty, driving, pregnancy or people who avoid alcohol: such claims need a "
    "laboratory method and the law of the place";
inline constexpr const char* predicted_gravity =
    "never proves that fermentation is over: bottles filled too early can burst. Before any packaging ask for two equal measured gravities days apart, or a "
    "forced ferment. Nothing is extrapolated";

}  // namespace wortmath::attenuation::detail
