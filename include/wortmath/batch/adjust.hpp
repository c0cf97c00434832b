// A reading that is off: what can be done about it, with exact amounts, and what each way does to the rest.
//
// Everything is a balance of masses. Volumes belong to the temperature of the reading; gravities are SG 20/20, as a
// hydrometer shows them in a sample at its own calibration temperature.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace wortmath::batch {

struct adjust_request {
    std::string stage;         // before_boil, after_boil, in_fermenter, after_fermentation
    double volume = 0.0;       // L, at `temperature`
    double gravity = 1.0;
    double temperature = 20.0;
    // What is wanted; one at least. Alcohol only after fermentation, volume at the temperature of the reading.
    std::optional<double> target_gravity, target_volume, target_alcohol;
    std::optional<double> original_gravity;    // of beer; required after fermentation
    std::optional<double> bitterness, colour;  // BU and SRM of the liquid as it is
    std::optional<double> evaporation;         // L of water an hour (20 degC): then boiling is told in minutes too
    std::optional<double> attenuation;         // apparent: then the alcohol that a wort will give is told
    double solids = 0.80, extract_colour = 0.0;  // of the extract at hand; colour in degL
    std::string extract_name = "malt extract syrup";
    // A second wort or beer to blend with; its volume at the same temperature, none: as much as it takes.
    std::optional<double> blend_gravity, blend_volume, blend_original_gravity, blend_bitterness, blend_colour;
};

struct adjusted_state {
    double mass = 0.0, volume = 0.0, volume_20c = 0.0, gravity = 1.0, extract = 0.0, original_extract = 0.0, alcohol_by_volume = 0.0;
    std::optional<double> bitterness, colour, alcohol_expected;
};

struct adjust_choice {
    std::string what;  // add_water, add_extract, add_dry_extract, add_sugar, boil_longer, boil_less, extract_and_water, blend, feed, sweeten
    double amount = 0.0;
    std::string unit;  // L, g, min
    std::vector<std::pair<std::string, double>> further;  // the same in other measures, under names with their unit
    std::string sentence;
    adjusted_state after;
};

struct adjust_result {
    adjusted_state now;
    std::optional<double> target_gravity;
    std::vector<adjust_choice> choices;
    std::vector<std::string> not_possible;  // sentences
    std::vector<std::string> cautions;      // sentences
};

// Throws file_error without a place: a sentence about what was asked.
adjust_result adjust(const adjust_request& request);

struct fermentation_request {
    std::vector<double> days, gravities;
    double standard_uncertainty = 0.0005;  // of one reading, beyond the offset that all readings of the instrument share
    std::optional<double> original_gravity;
    std::optional<double> expected_gravity;  // what the plan or the yeast's figure says
    std::optional<double> limit_gravity;     // of a forced fermentation
};

struct fermentation_judgement {
    std::string verdict;  // falling, steady_at_the_end, stuck, steady, cannot_tell, rising
    std::string sentence;
    double slope = 0.0, slope_uncertainty = 0.0;  // gravity a day
    double drop = 0.0, drop_uncertainty = 0.0;    // first to last, on the fitted line
    double probability = 1.0;  // of a fall at least this steep in the readings if nothing moved
    double detectable = 0.0;   // the fall a day that such readings would show nine times in ten
    std::optional<double> remaining_drop, remaining_co2, remaining_co2_upper;  // volumes, in a closed package
    std::vector<std::string> cautions;
};

fermentation_judgement judge_fermentation(const fermentation_request& request);

}  // namespace wortmath::batch
