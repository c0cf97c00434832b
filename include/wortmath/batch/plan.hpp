// Which amounts reach the targets: the batch turned round. The answer is a batch file again.
//
// In the file, [[target]] names a result and the value it shall have, [[free]] an amount that may change for it and how far.
// More freedom than targets: of all answers the one with the smallest relative change from the file's amounts.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "wortmath/batch/gradient.hpp"

namespace wortmath::batch {

struct plan_target {
    std::string result;  // a key of results or of package
    double value = 0.0;  // in the unit of that result
    std::string text;    // as the file has it
    int line = 0;
};

// Amounts that change together, in proportion; one in most cases.
struct plan_freedom {
    std::vector<std::size_t> amounts;  // numbered as in amounts_of
    double least = 0.0, most = 0.0;    // of the first of them
    int line = 0;
};

struct plan_request {
    std::vector<plan_target> targets;
    std::vector<plan_freedom> free;
};

struct planned_target {
    std::string result;
    double wanted = 0.0, reached = 0.0;
    std::string text;
    bool met = false;
    std::string sentence;  // why not, and the closest; empty if met
};

struct planned_amount {
    where at;
    std::string ingredient;
    measure in = measure::number;
    std::string unit, before_text, after_text;  // in the file's own unit
    double before = 0.0, after = 0.0, least = 0.0, most = 0.0;
    bool at_least = false, at_most = false;
};

struct plan_result {
    bool met = false;
    int iterations = 0;
    std::vector<planned_target> targets;
    std::vector<planned_amount> amounts;
    std::vector<outside<double>> newly_outside;  // uses of models outside their validated range that the file did not have
    std::vector<caution> new_cautions;           // of level caution or stop, that the file did not have
    std::string text;                            // the batch file with its new amounts
};

// The [[target]] and [[free]] of a file. Throws file_error.
plan_request read_plan(std::string_view toml, const batch<double>& b);

plan_result plan(std::string_view toml);
plan_result plan(std::string_view toml, const plan_request& request);

// The same file with some amounts (numbered as in amounts_of) replaced where they stand; everything else stays as it is,
// the unit of each amount too. Values are in the library's units.
struct replacement {
    std::size_t amount = 0;
    double value = 0.0;
};
std::string with_amounts(std::string_view toml, const std::vector<replacement>& changes);
// How an amount of this unit is written in a file: 17 significant digits where they are needed.
std::string written(double value, measure in, std::string_view unit);

// ---- to another kettle ------------------------------------------------------------------------------------------------

// What is not given stays as the file has it. Litres, litres of water an hour, metres.
struct rescale_request {
    std::optional<double> factor;           // of the volume in the fermenter at pitching ...
    std::optional<double> volume;           // ... or that volume itself, at 20 degC
    std::optional<double> evaporation;      // L/h, of every boil
    std::optional<double> leave;            // left in the kettle at transfer
    std::optional<double> dead_space;       // left in the tun
    std::optional<double> rack_leave;       // left under the beer
    std::optional<double> packaging_loss;
    std::optional<double> largest_boil;     // the most the kettle may hold while it boils, hot
    std::optional<double> altitude;         // m
    std::optional<double> top_up_temperature;  // degC, where a top-up has to be put in; 15
};

struct rescale_result {
    plan_result plan;             // against the file after scaling; its text is the answer
    double factor = 1.0, volume = 0.0, top_up = 0.0;  // litres; the top-up at its own temperature
    double boil_volume = 0.0;     // the most in the kettle while it boils, hot
    bool top_up_put_in = false;   // the file had none and needs one now
    std::vector<std::string> sentences;
};

rescale_result rescale(std::string_view toml, const rescale_request& request);

}  // namespace wortmath::batch
