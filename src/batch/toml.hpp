// The TOML parser, set up the same way for every file that uses it, and its errors as those of a batch file.
#pragma once

#include <string_view>

#include "wortmath/batch/read.hpp"

#undef NDEBUG  // what the parser takes for granted is checked in every build
namespace wortmath::batch {
[[noreturn]] void parser_gave_up();
}
#define TOML_ASSERT(condition) ((condition) ? void() : ::wortmath::batch::parser_gave_up())
#define TOML_HEADER_ONLY 1
#define TOML_EXCEPTIONS 1
#define TOML_ENABLE_FORMATTERS 0
#define TOML_MAX_NESTED_VALUES 32  // a batch nests three deep; the parser walks tables recursively
#include "third_party/toml++/toml.h"

namespace wortmath::batch {
// Throws file_error.
toml::table parse_toml(std::string_view text);
}  // namespace wortmath::batch
