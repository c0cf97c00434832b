// Reads a batch file (TOML 1.0) and checks all that can be told from its words and amounts alone.
// What needs the state of the wort (boiled dry, chilled upwards, less sugar than gas) is checked when it is brewed.
#ifndef WORTMATH_BATCH_READ_HPP
#define WORTMATH_BATCH_READ_HPP

#include "wortmath/batch/batch.hpp"

#include <filesystem>
#include <string_view>

namespace wortmath::batch {

// Both throw file_error, with a sentence that names line, step and key wherever they are known.
batch<double> read_text(std::string_view toml);
batch<double> read_file(const std::filesystem::path& path);

}  // namespace wortmath::batch

#endif
