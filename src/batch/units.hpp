// The units a batch file may use, with exact factors, and the reading of an amount such as "5.2 gal".
#ifndef WORTMATH_SRC_BATCH_UNITS_HPP
#define WORTMATH_SRC_BATCH_UNITS_HPP

#include "wortmath/batch/batch.hpp"

#include <span>
#include <stdexcept>
#include <string>
#include <string_view>

namespace wortmath::batch {

enum class dimension : unsigned char {
    mass, volume, time, temperature, pressure, length, evaporation, power, share, colour, gravity, gas, absorption
};

// The pint, quart, gallon and fluid ounce exist twice. A barrel is the US beer barrel.
enum class measures : unsigned char { common, us, imperial };

struct unit {
    std::string_view name;
    dimension of;
    measure in;  // what the factors lead to
    // value = (number - zero) * times / over. Two factors, so that 82 % is 0.82 and 212 degF is 100 degC to the last
    // digit, and no limit is missed by a rounding.
    double zero, times, over;
    measures system = measures::common;
};

std::span<const unit> all_units();
const unit* find_unit(std::string_view name);

// "a mass"; "mg, g, kg, oz, lb". For sentences: what was expected.
std::string_view dimension_name(dimension d);
std::string units_of(dimension d);

// A sentence about an amount that cannot be read; the caller knows the place.
struct amount_error : std::runtime_error {
    using std::runtime_error::runtime_error;
};

struct parsed_amount {
    double number;  // as written
    const unit* in;
    double value() const { return (number - in->zero) * in->times / in->over; }
};

// Reads number and unit, and refuses what is not a finite number with a unit of this dimension. Signs and limits
// are the caller's: what is possible depends on the key.
parsed_amount parse_amount(std::string_view text, dimension d);

// A value of the library's scale `in` as a number of the named unit, for showing it as the file would write it.
// The unit must belong to that scale; an empty name leaves the value alone.
double in_unit(double value, measure in, std::string_view unit_name);

// Text from a file for use in a message: cut when long, control characters made visible; and the same in quotes.
std::string visible(std::string_view text);
std::string in_quotes(std::string_view text);
// The shortest decimal that reads back as the same number.
std::string plain(double x);

}  // namespace wortmath::batch

#endif
