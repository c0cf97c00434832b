// The [[uncertain]] and [[reading]] of a batch file: what is known about its amounts, and what was read on the day.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "wortmath/batch/batch.hpp"

namespace wortmath::batch {

// One amount of a batch, by its place in for_each_amount.
struct amount_place {
    std::size_t index = 0;
    int step = 0, line = 0;
    std::string do_word, key, name, table, unit;
    measure in = measure::number;
    double value = 0.0;
    bool given = false;
};
std::vector<amount_place> amount_places(const batch<double>& b);

// How an amount or a reading is uncertain: one of these, or an instrument. In the unit of the value.
struct statement {
    std::string shape;      // "normal", "rectangular", ..., "instrument"
    double uncertainty = 0.0, limit = 0.0, factor = 0.0, dof = 0.0;  // dof 0: infinite
    std::string instrument, label;  // a preset; the label tells two of one kind apart
};

struct uncertain_amount {
    int line = 0;
    std::vector<std::size_t> indices;  // of amount_places; several additions of one ingredient share what belongs to the packet
    statement how;
};

struct day_reading {
    int line = 0, step = 0;
    std::string quantity, text;
    double value = 0.0;
    std::string unit;                    // "SG" or "degP" for a gravity, else empty
    std::optional<double> temperature;   // of the sample, or of the wort when its volume was read
    std::optional<statement> how;        // nothing: the usual instrument of the quantity
    std::string label;                   // what the brewer calls it
};

inline constexpr std::string_view reading_quantities[] = {"volume", "mass", "temperature", "gravity", "refractometer", "alcohol", "carbonation", "pressure", "bitterness", "colour"};

// Both read the text of the whole file and throw file_error.
std::vector<uncertain_amount> read_uncertain(std::string_view toml, const batch<double>& b);
std::vector<day_reading> read_readings(std::string_view toml, const batch<double>& b);

}  // namespace wortmath::batch
