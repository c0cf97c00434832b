// The sum of the CIE over the rows of its tables, which several families share.
#pragma once

#include "wortmath/colour/cie_tables.hpp"
#include "wortmath/colour/words.hpp"

namespace wortmath::colour::detail {

constexpr const observer_table& table_of(word::observer o) { return o == word::observer::cie_1931 ? observer_cie_1931 : observer_cie_1964; }
constexpr const double (&table_of(word::illuminant i))[cie_rows] { return i == word::illuminant::d65 ? illuminant_d65 : illuminant_c; }

// X = sum S T xbar / sum S ybar, every `Step` nm; `transmitted` gives T of a row.
template <int Step, class T, class Transmitted>
constexpr several<T, 3> tristimulus_sum(const double (&illuminant)[cie_rows], const observer_table& observer, Transmitted transmitted) {
    static_assert(Step % 5 == 0 && 400 % Step == 0);
    T x = T(0.0), y = T(0.0), z = T(0.0);
    double white = 0.0;
    for (std::size_t i = 0; i < cie_rows; i += Step / 5) {
        T light = illuminant[i] * transmitted(i);
        x = x + light * observer.xbar[i];
        y = y + light * observer.ybar[i];
        z = z + light * observer.zbar[i];
        white += illuminant[i] * observer.ybar[i];
    }
    return {{x / white, y / white, z / white}};
}

}  // namespace wortmath::colour::detail
